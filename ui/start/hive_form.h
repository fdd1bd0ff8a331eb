#pragma once

#include "core/edit/edits.h"
#include "ui/form/form.h"
#include "ui/plan/sketch.h"
#include "ui/start/new_hives.h"

namespace ui::start {

/// One hive that is put on the ground or on an empty stand; the next is like it.
class HiveForm : public form::Form {
public:
    /// Throws Error(Book).
    HiveForm(const desk::Desk& desk, core::YardId yard, const Kept& kept, core::MmPoint at);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    std::vector<form::Problem> problems(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;

    core::YardId yard() const { return m_yard.id; }
    plan::Sketch sketch(const form::Values& values) const;
    static void keep(const form::Values& values, Kept& kept);

private:
    /// nullopt: something but the label cannot be read.
    std::optional<core::edit::NewColony> colonyOf(const form::Values& values) const;

    const desk::Desk& m_desk;
    core::Yard m_yard;
    Kept m_kept;
    core::MmPoint m_at;
};

} // namespace ui::start
