#pragma once

#include "core/rules/day_view.h"
#include "core/rules/explain.h"
#include "core/rules/plan.h"

#include <optional>
#include <vector>

// What the best set of unions gave up: the union that a colony left alone at risk could best have had, and what that
// would have cost the rest. Exact, by the same matching; worked out when asked, not with every plan.

namespace core::rules {

/// A colony that stands near, and the first part of rule 4.7 that bars a union with it.
struct BarredNeighbour {
    ColonyIx colony;
    qint64 squaredMm = 0; ///< between the stands
    Objection against;    ///< an empty rule: only what the user asked for (forbidden, pinned, too many)
};

struct GivenUp {
    ColonyIx colony;
    /// The one with which the sum of all unions stays highest; of equal ones the matching's. None: no union is
    /// possible.
    std::optional<ColonyIx> partner;
    int gain = 0;    ///< of that union, thousandths
    qint64 lost = 0; ///< what all other unions would gain less than the plan's, thousandths: never less than `gain`
    std::vector<BarredNeighbour> nearest; ///< without a partner: at most three, the nearest first
};

/// Of colonies that the plan for `request` leaves alone, in the order given; at most one matching a colony. `yards`:
/// those asked for, natural order. Shake-outs stay out of the sums.
std::vector<GivenUp> givenUp(const DayView& view, const std::vector<YardIx>& yards, const PlanRequest& request,
                             const std::vector<ColonyIx>& colonies);

/// The same after a plan, for one who has it: the plan's pins are kept, other wishes are not known any more.
std::vector<GivenUp> givenUp(const Snapshot& s, const std::vector<ColonyFacts>& facts, const Plan& plan,
                             const std::vector<ColonyIx>& colonies);

/// "Best would have been K4, gain 310; the rest would lose 452 …", or who stood near and what barred them.
Sentences sentencesOf(const Snapshot& s, const GivenUp& given);

} // namespace core::rules
