#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// What became of the queen that heads a colony, or headed it to its end. Moved to a colony of the book she heads that
/// one.
class QueenEndForm : public RecordForm {
public:
    /// Throws Error(BadData) where no queen heads the colony.
    QueenEndForm(const core::edit::Session& book, const core::Colony& colony, core::Day day);

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
    core::Day dayOf(const form::Values& values) const;
    /// Where she is moved to; nullopt: to none of the book.
    std::optional<core::ColonyId> toOf(const form::Values& values) const;
    /// Who heads that one.
    std::optional<core::Queen> otherOf(const form::Values& values) const;

    core::Queen m_queen;
    core::Day m_day;
};

} // namespace ui::records
