#pragma once

#include "core/edit/session.h"
#include "core/rules/notifiable.h"
#include "ui/form/form.h"

#include <optional>

namespace ui::health {

/// What must be reported where: a line of the book's own.
class NotifiableForm : public form::Form {
public:
    /// `line`: to change; a shipped one: a line of the book's own that stands in its place. None: a new one.
    NotifiableForm(const core::edit::Session& book, std::optional<core::rules::NotifiableLine> line);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    std::vector<form::Problem> problems(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

private:
    core::Notifiable rowOf(const form::Values& values) const;

    const core::edit::Session& m_book;
    std::optional<core::rules::NotifiableLine> m_line;
};

} // namespace ui::health
