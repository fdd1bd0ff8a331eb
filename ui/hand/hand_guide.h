#pragma once

#include "core/rules/day_view.h"
#include "core/rules/drift.h"
#include "core/rules/explain.h"
#include "ui/desk/desk.h"
#include "ui/plan/carry_guide.h"

#include <QObject>
#include <QStringList>

#include <functional>
#include <map>
#include <memory>

namespace ui::hand {

/// Says what a drop would do while hives are in the hand: how far, what the rules say of uniting or of another yard,
/// what the foragers will do.
class HandGuide : public QObject, public plan::CarryGuide {
    Q_OBJECT
public:
    /// The yards that are listed beside the plan.
    struct Yards {
        std::function<std::optional<core::YardId>(const QPoint& global)> at;
        /// The one that hives are held over; nullopt: none.
        std::function<void(std::optional<core::YardId> yard, bool refused)> mark;
    };
    HandGuide(desk::Desk& desk, Yards yards, QObject* parent);
    ~HandGuide() override;

    plan::CarryWords wordsOf(const plan::Carry& carry) override;
    std::optional<core::YardId> yardAt(const QPoint& global) override { return m_yards.at(global); }
    void emptied() override;

    /// What rule 4.7 says of the two, worked out once a reading; nullptr where one does not live.
    const core::rules::Explanation* explained(core::ColonyId a, core::ColonyId b);
    /// Why the two may not unite; empty: they may.
    QString whyNot(core::ColonyId carried, core::ColonyId onto);
    /// What stands against carrying them to that yard; empty: nothing.
    QString againstYard(const std::vector<plan::OnWay>& hives, core::YardId yard);

    // What is said and drawn once they are set down; asked before.
    std::vector<plan::Drift> driftOf(const std::vector<plan::OnWay>& hives, bool setDown) const;
    QStringList foragers(const plan::Carry& carry) const;
    QString swapForagers(core::ColonyId one, core::ColonyId other) const;
    static QString papers();

    QString nameOf(core::ColonyId colony) const;
    QString names(const std::vector<plan::OnWay>& hives) const;

private:
    const core::rules::DayView& view();
    void forget();
    void workOutDrift(const plan::Carry& carry);
    plan::CarryWords onGround(const plan::Carry& carry);
    plan::CarryWords onHive(core::ColonyId carried, core::ColonyId onto);
    plan::CarryWords swapping(core::ColonyId carried, core::ColonyId onto);
    plan::CarryWords overYard(const plan::Carry& carry);
    QString heldAs(core::ColonyId colony) const;
    QString movingCaution(const plan::Carry& carry) const;
    std::vector<core::rules::DriftTo> driftAt(const plan::OnWay& hive, const std::vector<plan::OnWay>& all,
                                              bool setDown) const;
    QString driftLine(const std::vector<plan::OnWay>& hives, bool setDown) const;

    desk::Desk& m_desk;
    Yards m_yards;
    std::unique_ptr<core::rules::DayView> m_view;
    std::map<std::pair<core::ColonyIx, core::ColonyIx>, core::rules::Explanation> m_explained;
    std::map<core::YardId, QString> m_against; ///< of the hives in the hand
    std::optional<std::vector<plan::Drift>> m_drift;
    QString m_driftLine;
};

} // namespace ui::hand
