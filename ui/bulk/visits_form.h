#pragma once

#include "ui/bulk/visit_fields.h"
#include "ui/records/record_form.h"

#include <vector>

namespace ui::bulk {

/// Several visits of the book, changed together: only what is typed anew is written, all in one undo.
class VisitsForm : public records::RecordForm {
public:
    /// Throws Error(BadData) where one of them is no longer in the book.
    VisitsForm(const core::edit::Session& book, std::vector<core::VisitId> visits);

    QString title() const override;
    QString saveText() const override;
    QString hint() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;
    bool quick() const override;

private:
    struct Shown {
        VisitFigure figure;
        Common common;
    };
    static std::optional<QString> writtenOf(const Shown& shown, const form::Values& values);
    core::edit::VisitPut putOf(const form::Values& values) const;
    bool nothingChanged(const form::Values& values) const;

    std::vector<core::VisitId> m_visits;
    std::vector<core::Visit> m_was;
    std::vector<Shown> m_figures;
    Common m_day, m_by, m_note;
};

/// The same visit written of several colonies.
class SameVisitForm : public records::RecordForm {
public:
    SameVisitForm(const core::edit::Session& book, std::vector<core::ColonyId> colonies, core::Day day, QString by);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    core::edit::Edit edit(const form::Values& values) const override;

protected:
    void judge(form::Judge& judge, const form::Values& values) const override;
    bool quick() const override;

private:
    core::Visit visitOf(const form::Values& values) const;

    std::vector<core::ColonyId> m_colonies;
    core::Day m_day;
    QString m_by;
    std::vector<VisitFigure> m_figures;
};

} // namespace ui::bulk
