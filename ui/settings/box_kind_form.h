#pragma once

#include "core/edit/session.h"
#include "ui/form/form.h"

#include <optional>

namespace ui::settings {

/// A box kind of the users' own: its name, frames, outside sizes and what an empty one weighs, in the unit shown.
class BoxKindForm : public form::Form {
public:
    /// `was`: the kind to change; none: a new one.
    BoxKindForm(const core::edit::Session& book, std::optional<core::BoxKind> was);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    std::vector<form::Problem> problems(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

    core::BoxKind kindOf(const form::Values& values) const;

private:
    const core::edit::Session& m_book;
    std::optional<core::BoxKind> m_was;
    core::WeightUnit m_unit; ///< as it was when the form began
};

} // namespace ui::settings
