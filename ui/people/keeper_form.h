#pragma once

#include "core/edit/session.h"
#include "ui/form/form.h"

#include <optional>

namespace ui::people {

/// Whose book it is, as the register and the report print it, and whose rules hold.
class KeeperForm : public form::Form {
public:
    explicit KeeperForm(const core::edit::Session& book);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    std::vector<form::Problem> problems(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

private:
    const core::edit::Session& m_book;
    std::optional<core::Keeper> m_was;
};

} // namespace ui::people
