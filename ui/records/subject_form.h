#pragma once

#include "ui/records/record_form.h"

namespace ui::records {

/// What a result or treatment is of. Where a new one begins both may be given: the colony, and the yard it stands in as
/// the other choice; of a record exactly one is set.
struct Subject {
    std::optional<core::ColonyId> colony;
    std::optional<core::YardId> yard;
};

/// A form of a record that is of a colony or of a whole yard.
class SubjectForm : public RecordForm {
protected:
    SubjectForm(const core::edit::Session& book, const Subject& about, core::Day day)
        : RecordForm(book), m_about(about), m_day(day) {}

    core::Day day() const { return m_day; } ///< that it begins with
    QString subjectName() const;
    /// Colony or yard, then the one or the other.
    std::vector<form::Field> subjectFields() const;
    void putSubject(form::Values& values) const;
    bool ofYard(const form::Values& values) const;
    void judgeSubject(form::Judge& judge, const form::Values& values, core::Day on) const;
    /// Of values without problems: one of the two.
    Subject subjectOf(const form::Values& values, core::Day on) const;

private:
    Subject m_about;
    core::Day m_day;
};

} // namespace ui::records
