#pragma once

#include "ui/records/subject_form.h"

namespace ui::records {

/// A laboratory's or inspector's finding, an order or a release; of a colony or of a yard.
class ResultForm : public SubjectForm {
public:
    ResultForm(const core::edit::Session& book, const Subject& about, core::Day day);
    ResultForm(const core::edit::Session& book, const core::Result& was);

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
    core::Result resultOf(const form::Values& values) const;

    std::optional<core::Result> m_was;
};

} // namespace ui::records
