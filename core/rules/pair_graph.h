#pragma once

#include "core/pairing/matching.h"
#include "core/rules/day_view.h"
#include "core/rules/plan.h"
#include "core/rules/unions.h"

#include <set>
#include <vector>

// The pairs that may unite, as a graph for core/pairing.

namespace core::rules {

struct PairGraph {
    std::vector<ColonyIx> nodes; ///< node n is the colony nodes[n]
    std::vector<pairing::Edge> edges;
};

/// Pairs that the user forbids, the earlier colony first.
using ForbiddenPairs = std::set<ColonyPair>;
ForbiddenPairs forbiddenBy(const PlanRequest& request);

/// Adds the colonies as nodes, and an edge for each two of them that may unite and are not forbidden.
void addPairs(const DayView& view, const std::vector<ColonyIx>& colonies, const ForbiddenPairs& forbidden,
              PairGraph& graph);

/// Of each yard asked for, by yard, the colonies that may take part and are neither pinned nor left out, in natural
/// order.
std::vector<std::vector<ColonyIx>> freeColonies(const DayView& view, const std::vector<YardIx>& yards,
                                                const std::vector<ChosenPair>& pins,
                                                const std::vector<ColonyIx>& leftOut);

} // namespace core::rules
