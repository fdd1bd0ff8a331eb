#pragma once

#include "ui/close/close_lines.h"
#include "ui/records/record_form.h"

#include <memory>

namespace ui::close {

/// What a form of this step notes; of values without problems.
class StripForm : public records::RecordForm {
public:
    virtual Drafted drafted(const form::Values& values) const = 0;
    core::edit::Edit edit(const form::Values& values) const final;
    QString saveText() const override;
    QString hint() const override;

protected:
    StripForm(const core::edit::Session& book, core::edit::StripClose strip, QString title)
        : RecordForm(book), m_strip(std::move(strip)), m_title(std::move(title)) {}
    bool quick() const override { return false; } // holds are of the whole book
    QString title() const override { return m_title; }
    const core::edit::StripClose& strip() const { return m_strip; }
    /// The two colonies, and which of them was carried to which.
    std::vector<form::Field> pairFields(std::function<bool(const form::Values&)> shown) const;
    void judgePair(form::Judge& judge, const form::Values& values) const;
    core::edit::DoneInstead pairOf(const form::Values& values, core::LineageHow how) const;

private:
    core::edit::StripClose m_strip;
    QString m_title;
};

/// Why a strip was not done.
std::unique_ptr<StripForm> notDoneForm(const core::edit::Session& book, const Line& line,
                                       const core::edit::StripClose& strip);
/// What was done instead: in words, and the union or shake-out that it was, if it was one.
std::unique_ptr<StripForm> changedForm(const core::edit::Session& book, const Line& line,
                                       const core::edit::StripClose& strip);
/// A union or shake-out that never was on the sheet. Of `strip` yard, day and by are read.
std::unique_ptr<StripForm> offSheetForm(const core::edit::Session& book, const core::edit::StripClose& strip);

/// The edit that writes what is noted.
core::edit::Edit editOf(const Drafted& drafted);

} // namespace ui::close
