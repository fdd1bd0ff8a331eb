#pragma once

#include "core/edit/edits.h"
#include "ui/form/form.h"
#include "ui/plan/sketch.h"
#include "ui/start/new_hives.h"

namespace ui::start {

/// A hive that was carried: to another yard, or on a day that is past. (Today's carries within a yard are dragged.)
class CarryForm : public form::Form {
public:
    /// Throws Error(Book); Error(BadData) where it stands nowhere.
    CarryForm(const desk::Desk& desk, core::ColonyId colony);

    QString title() const override;
    QString saveText() const override;
    std::vector<form::Field> fields() const override;
    form::Values start() const override;
    std::vector<form::Problem> problems(const form::Values& values) const override;
    core::edit::Edit edit(const form::Values& values) const override;
    std::optional<QString> meanwhile() const override;

    /// Where it is carried to, as typed.
    std::optional<core::YardId> yardOf(const form::Values& values) const;
    plan::Sketch sketch(const form::Values& values) const;

private:
    QString papers(const form::Values& values) const;
    std::optional<core::edit::CarryTo> carryOf(const form::Values& values) const;

    const desk::Desk& m_desk;
    core::Colony m_colony;
    core::Placement m_open;
    core::Stand m_stand;
};

} // namespace ui::start
