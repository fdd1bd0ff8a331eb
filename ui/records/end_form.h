#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// The end of a colony that is neither united nor shaken out: dead, destroyed or sold. Of one that has ended: how and
/// when, put right.
class EndForm : public RecordForm {
public:
    EndForm(const core::edit::Session& book, const core::Colony& colony, core::Day day);

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

    core::Colony m_was;
    core::Day m_day;
};

} // namespace ui::records
