#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// A queen at the head of a colony. A new one: with what became of the one before, where one heads it. One that is in
/// the book: put right, with her end.
class QueenForm : public RecordForm {
public:
    QueenForm(const core::edit::Session& book, core::ColonyId colony, core::Day day);
    QueenForm(const core::edit::Session& book, const core::Queen& was);

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
    void addHerFields(std::vector<form::Field>& out) const;
    core::Queen queenOf(const form::Values& values) const;
    core::Day dayOf(const form::Values& values) const;

    core::ColonyId m_colony;
    core::Day m_day;
    std::optional<core::Queen> m_before; ///< of a new one: heads the colony
    std::optional<core::Queen> m_was;
};

} // namespace ui::records
