#pragma once

#include "ui/desk/desk.h"
#include "ui/form/form.h"
#include "ui/plan/sketch.h"

namespace ui::start {

/// A yard: its name, where on earth it lies and where its gate is. A new one, or one that is put right.
class YardForm : public form::Form {
public:
    /// nullopt: a new one. Throws Error(Book).
    YardForm(const desk::Desk& desk, std::optional<core::YardId> yard);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    std::vector<form::Problem> problems(const form::Values& values) const override;
    QStringList odd(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

    bool isNew() const { return !m_before; }
    static QString seasonsOf(const form::Values& values); ///< what the latitude is used for
    static QString nameOf(const form::Values& values);
    /// Its gate as typed, so far as it can be read.
    static plan::Sketch sketch(const form::Values& values);

private:
    core::Yard yardOf(const form::Values& values) const;

    const desk::Desk& m_desk;
    std::optional<core::Yard> m_before;
};

} // namespace ui::start
