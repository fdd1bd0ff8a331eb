#pragma once

#include "core/edit/hive_row.h"
#include "ui/form/form.h"
#include "ui/plan/sketch.h"
#include "ui/start/new_hives.h"

namespace ui::start {

/// A row of hives, all alike, drawn on the plan as it is typed.
class RowForm : public form::Form {
public:
    /// Begins with what the last row was like. Throws Error(Book).
    RowForm(const desk::Desk& desk, core::YardId yard, const Kept& kept);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    std::vector<form::Problem> problems(const form::Values& values) const override;
    QStringList odd(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;

    core::YardId yard() const { return m_yard.id; }
    /// The row as far as it can be read; without labels where they cannot.
    plan::Sketch sketch(const form::Values& values) const;
    static void keep(const form::Values& values, Kept& kept);

private:
    /// nullopt: something but the label cannot be read.
    std::optional<core::edit::HiveRow> rowOf(const form::Values& values) const;
    QString labelsLine(const form::Values& values) const;
    void judgeLabels(const core::edit::HiveRow& row, std::vector<form::Problem>& out) const;
    void judgePlaces(const core::edit::HiveRow& row, std::vector<form::Problem>& out) const;

    const desk::Desk& m_desk;
    core::Yard m_yard;
    Kept m_kept;
};

} // namespace ui::start
