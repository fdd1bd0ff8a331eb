#pragma once

#include "core/rules/plan.h"

#include <QString>

#include <vector>

// What a change of mind, or of the book, does to the plan of a yard: what came, what went, what was turned round.

namespace core::rules {

/// What a plan does in one yard, by the rows' ids and with the names of its day, so that it can be compared once the
/// plan itself is gone.
struct PlanGist {
    struct Joined {
        ColonyId moved, host; ///< of a shake-out the one shaken out, and whom it goes to
        ColonyId upper;       ///< of a union: whose box is on top
        QString movedName, hostName;
        int gain = 0; ///< thousandths of a spring colony; of a shake-out 0
    };
    struct Left {
        ColonyId colony;
        QString name;
        bool atRisk = false;
    };
    std::vector<Joined> unions; ///< in the order of work
    std::vector<Joined> shakeOuts;
    std::vector<Left> alone;
    qint64 gain = 0; ///< of all its unions
};
PlanGist gistOf(const Snapshot& s, const Plan& plan, YardIx yard);

enum class PlanChange {
    UnionWent,
    UnionCame,
    HostTurned,  ///< the same two, the other one carried
    BoxesTurned, ///< the same host, the other box on top
    GainChanged, ///< the same union, worth more or less
    ShakeOutWent,
    ShakeOutCame,
    ShakeOutElsewhere,
    LeftAlone
};
struct PlanChangeRow {
    PlanChange what = PlanChange::UnionCame;
    PlanGist::Joined pair; ///< as it is now, of what went as it was; of one left alone the moved
    int gainBefore = 0;    ///< where the gain changed
    bool atRisk = false;   ///< of one left alone
};

struct PlanDifference {
    std::vector<PlanChangeRow> rows; ///< in the order of PlanChange, each kind in the order of its plan
    int unionsBefore = 0, unions = 0;
    qint64 gainBefore = 0, gain = 0;
    bool none() const { return rows.empty(); }
};
PlanDifference differenceOf(const PlanGist& before, const PlanGist& now);

} // namespace core::rules
