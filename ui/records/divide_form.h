#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// A divide done outside a plan: a new colony from this one, on an empty stand or a metre beside it. Refused with the
/// rule's sentence where a hold stands.
class DivideForm : public RecordForm {
public:
    DivideForm(const core::edit::Session& book, const core::Colony& mother, core::Day day);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    QStringList odd(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;
    bool quick() const override { return false; } // holds are of the whole book

private:
    core::Day dayOf(const form::Values& values) const;

    core::Colony m_mother;
    core::Day m_day;
    std::optional<core::Stand> m_stand; ///< the mother's
    int m_heading = 180;
    std::optional<core::MmPoint> m_beside;
};

} // namespace ui::records
