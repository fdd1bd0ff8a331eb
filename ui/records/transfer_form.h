#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// Bees, comb or kit between two colonies: a new one to or from a colony, or one of the book to be changed.
class TransferForm : public RecordForm {
public:
    /// Throws Error(Book).
    TransferForm(const core::edit::Session& book, core::ColonyId about, core::Day day);
    TransferForm(const core::edit::Session& book, const core::Transfer& was);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    QStringList odd(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;

private:
    core::Transfer transferOf(const form::Values& values) const;

    core::ColonyId m_about;
    core::Day m_day;
    std::optional<core::Transfer> m_was;
};

} // namespace ui::records
