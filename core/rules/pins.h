#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"
#include "core/rules/unions.h"

#include <vector>

// Rule 4.7: pairs that the user asks for.

namespace core::rules {

/// The pins of a request as chosen pairs, each once. Throws Error(BadData) naming the rule and the facts: a pin that
/// 4.7 less 10 bars, pins that share a colony, a pin that is forbidden or of a colony left out, more pins than `most`,
/// or of a yard not asked for.
std::vector<ChosenPair> checkedPins(const DayView& view, const std::vector<YardIx>& yards, const PlanRequest& request);

/// What rule 4.7 less part 10 says against the two as a pin, each part by name; empty: they can be pinned.
QString pinBarred(const DayView& view, ColonyPair pin);

/// The same two colonies, whichever is named first.
ColonyPair inOrder(ColonyPair pair);

} // namespace core::rules
