#pragma once

#include "ui/records/subject_form.h"

namespace ui::records {

/// A treatment of a colony or a yard with all that medicine records ask for.
class TreatmentForm : public SubjectForm {
public:
    TreatmentForm(const core::edit::Session& book, const Subject& about, core::Day day);
    TreatmentForm(const core::edit::Session& book, const core::Treatment& was);

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
    core::Treatment treatmentOf(const form::Values& values) const;

    std::optional<core::Treatment> m_was;
};

} // namespace ui::records
