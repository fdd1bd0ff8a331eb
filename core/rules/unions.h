#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

#include <optional>
#include <vector>

// Rule 4.7: the set of unions whose gains sum to the maximum.

namespace core::rules {

struct ChosenPair {
    ColonyIx a, b; ///< a before b in natural order
    int gain = 0;
    bool pinned = false;
    std::optional<ColonyIx> host = {}; ///< as asked for; else by 4.8
    std::optional<ColonyIx> top = {};
};

/// How many unions a yard's limit leaves besides its pins; nullopt: it has no limit of its own.
std::optional<int> leftIn(const DayView& view, const PlanRequest& request, const std::vector<ChosenPair>& pins,
                          YardIx yard);

/// Each colony in at most one pair; pins are in, forbidden pairs are not, at most `most` over all the yards of the
/// request (`yards`: those asked for, natural order), none of a colony left out, and no more in a yard than its own
/// limit. Sorted by a. Throws Error(BadData) where a pin cannot be.
std::vector<ChosenPair> chooseUnions(const DayView& view, const std::vector<YardIx>& yards, const PlanRequest& request);

} // namespace core::rules
