#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

#include <vector>

// Rule 4.9: colonies too small to unite are shaken out in front of another.

namespace core::rules {

struct ChosenShakeOut {
    ColonyIx colony;
    ColonyIx into;                 ///< of a union its host
    std::optional<size_t> ofUnion; ///< position in the unions
};

/// As many as possible find a host; among those ways, the greatest sum of what they add. By colony.
/// `unions`: those of the plan; `leftOut`: neither shaken out nor hosts.
std::vector<ChosenShakeOut> chooseShakeOuts(const DayView& view, const std::vector<YardIx>& yards,
                                            const std::vector<Union>& unions, const std::vector<ColonyIx>& leftOut);

/// Whether the colony is one to shake out on the day: in season, of that class, not held, no laying workers.
bool toShakeOut(const DayView& view, ColonyIx c);

} // namespace core::rules
