#pragma once

#include "ui/desk/desk.h"
#include "ui/plan/plan_view.h"

#include <functional>
#include <optional>
#include <vector>

namespace ui::survey {

/// A stand of the yard that is drawn, with the hive on it where there is one.
struct Spot {
    core::StandId stand;
    QString name; ///< the hive's label, else "stand 7"
    core::MmPoint at;
    std::optional<core::ColonyId> hive;
    int headingDeg = 180;
};

/// What the tools of a survey have in common: the yard, what is picked of it, and how they speak and write.
class Site {
public:
    Site(desk::Desk& desk, plan::PlanView& plan, Dialogs& dialogs) : m_desk(desk), m_plan(plan), m_dialogs(dialogs) {}

    const plan::Scene& scene() const { return m_plan.scene(); }
    plan::PlanView& plan() const { return m_plan; }
    std::optional<core::YardId> yard() const { return m_desk.yard(); }
    core::LengthUnit unit() const { return scene().units.length; }

    std::vector<Spot> spots() const; ///< hives first, then empty stands
    std::optional<Spot> spotOf(core::ColonyId hive) const;
    std::optional<Spot> spotOf(core::StandId stand) const;
    /// Of the selected hives, then of the picked empty stands.
    std::vector<Spot> picked() const;
    bool isPicked(core::StandId stand) const;
    void pick(core::StandId stand, bool more); ///< an empty one; with `more` it is added, or no longer
    void pickThing(std::optional<core::FixedThingId> thing, std::optional<size_t> point = {});
    void pickNothing();
    const plan::FixedMark* thing() const; ///< the picked one, while it is in the drawing
    std::optional<size_t> point() const { return m_point; }
    /// The next empty stand or fixed thing, or the one before, in a round.
    void pickNext(int by);
    void pickNextPoint(int by);

    /// Snapped as a hive is when it is carried: to rows and columns of the others, else to tenths of a metre; `without`
    /// are passed over.
    core::MmPoint snapped(core::MmPoint at, const std::vector<Spot>& without) const;
    /// The middle of the hive or stand there, else the tenth of a metre.
    core::MmPoint snappedToHive(const plan::Touch& at) const;

    void say(const QString& sentence) const { emit m_desk.said(sentence); }
    /// False: refused, which is said, and nothing written.
    bool save(const QString& what, const core::edit::Edit& edit) const;
    std::optional<core::FixedThing> rowOf(core::FixedThingId id) const;

    std::function<void()> pickedChanged = [] {};

private:
    desk::Desk& m_desk;
    plan::PlanView& m_plan;
    Dialogs& m_dialogs;
    std::vector<core::StandId> m_stands;
    std::optional<core::FixedThingId> m_thing;
    std::optional<size_t> m_point;
};

} // namespace ui::survey
