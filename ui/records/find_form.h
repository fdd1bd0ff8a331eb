#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// Asks which colony, living or ended; writes nothing.
class FindForm : public RecordForm {
public:
    explicit FindForm(const core::edit::Session& book) : RecordForm(book) {}

    QString title() const override;
    QString saveText() const override;
    QString hint() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override { return {}; }
    core::edit::Edit edit(const form::Values&) const override { return {}; }
    /// Of values without problems.
    core::ColonyId found(const form::Values& values) const { return colonyOf(values, kColony, today()); }

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;
    bool quick() const override { return false; }
};

} // namespace ui::records
