#pragma once

#include "core/edit/kit_end.h"
#include "ui/records/record_form.h"

namespace ui::records {

// How quarantined kit ended: asked for where it is moved out of quarantine, and where that is put right.

/// Fields of a KitEnding besides day, by and note, shown where `state` of the values is burned or sterilised.
/// `stateKey`: the field that holds the state.
std::vector<form::Field> kitEndFields(const QString& stateKey);
/// What such a way needs, as examples with their sources, and who decides.
QString kitEndCaution(core::KitEndHow how);
void judgeKitEnd(form::Judge& judge, const form::Values& values, const QString& stateKey);
/// Of values without problems.
core::edit::KitEnding kitEndingOf(const form::Values& values, const QString& stateKey, core::Day today);
/// The values of these fields for an end that is in the book.
form::Values kitEndValues(const core::KitEnd& end);

/// An end of kit that is in the book, put right: how, when, who, by which paper. What kit it is of stays.
class KitEndForm : public RecordForm {
public:
    KitEndForm(const core::edit::Session& book, const core::KitEnd& was);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;

private:
    form::Values withState(const form::Values& values) const;

    core::KitEnd m_was;
};

} // namespace ui::records
