#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// Mites that fell onto a board under one hive: what is typed is said in mites a day beneath it, never in mites per 100
/// bees. One that is in the book: put right.
class MiteFallForm : public RecordForm {
public:
    MiteFallForm(const core::edit::Session& book, core::ColonyId colony, core::Day day);
    MiteFallForm(const core::edit::Session& book, const core::MiteFall& was);

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
    /// As it is typed; of values that mean nothing, of no mites in one day.
    core::MiteFall fallOf(const form::Values& values) const;
    QString noteOf(const form::Values& values) const;

    core::ColonyId m_colony;
    core::Day m_day;
    std::optional<core::MiteFall> m_was;
};

} // namespace ui::records
