#pragma once

#include "ui/records/place_form.h"
#include "ui/records/record_form.h"

namespace ui::records {

/// A colony's own data and its first place, put right.
class ColonyForm : public RecordForm {
public:
    ColonyForm(const core::edit::Session& book, const core::Colony& was);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;

private:
    core::Colony m_was;
    std::optional<PlaceFields> m_place; ///< of a colony that stood somewhere
};

/// A new colony on an empty stand of a yard; where that of an ended colony is asked for, its stand, label, box and
/// heading are proposed.
class NewColonyForm : public RecordForm {
public:
    NewColonyForm(const core::edit::Session& book, core::YardId yard, const std::optional<core::Colony>& before);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    QStringList odd(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;

private:
    core::Day sinceOf(const form::Values& values) const;

    core::YardId m_yard;
    std::optional<core::Colony> m_before;
    std::optional<core::Placement> m_place; ///< where that stood last
};

} // namespace ui::records
