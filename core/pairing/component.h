#pragma once

#include "core/pairing/matching.h"

#include <cstdint>
#include <vector>

namespace core::pairing {

/// A connected part of a graph, its nodes renumbered from 0.
struct Component {
    std::vector<int> nodes; ///< the graph's number of each, ascending
    std::vector<Edge> edges;
};

/// The connected parts that the edges of positive weight make, by their first node; nodes without such an edge are in
/// none. Edges keep their order.
std::vector<Component> positiveComponents(int nodes, const std::vector<Edge>& edges);

/// What is solved with is 2 · weight − 2 · price, and LEMON's duals are in quarters.
constexpr std::int64_t kDualScale = 8;

/// The greatest matching of one component where each edge costs half of `twicePrice` (≥ 0). Mates and duals by the
/// component's own numbers; the sum of weights and the price are left at 0. With an odd `twicePrice` all greatest
/// matchings have the same size.
/// A dense component is solved on few of its edges, and the others are priced by the duals: those that are worth more
/// than they cost come in, until none is. Exact, since the duals then cover every edge.
Matching solveComponent(const Component& component, std::int64_t twicePrice);

/// The same with all the edges at once: slow for dense ones.
Matching solveAllEdges(const Component& component, std::int64_t twicePrice);

} // namespace core::pairing
