#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// Feed given on one day to one colony or to several alike (one undo). What is typed is said as sugar beneath it. One
/// that is in the book: put right.
class FeedingForm : public RecordForm {
public:
    /// `colonies`: one at least. What was fed last on that day is proposed, but not how much.
    FeedingForm(const core::edit::Session& book, std::vector<core::ColonyId> colonies, core::Day day);
    FeedingForm(const core::edit::Session& book, const core::Feeding& was);

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
    form::Field amountField() const;
    form::Field measureField() const;
    /// As it is typed, of the first colony; of values that mean nothing, without an amount.
    core::Feeding feedingOf(const form::Values& values) const;
    QString sugarText(const form::Values& values) const;
    QString someName() const;
    std::optional<core::Feeding> lastOfTheDay() const;
    QStringList supered(core::Day day) const;

    std::vector<core::ColonyId> m_colonies;
    core::Day m_day;
    core::ShownUnits m_units;
    std::optional<core::Feeding> m_was;
};

} // namespace ui::records
