#pragma once

#include <cstdint>
#include <vector>

namespace core::pairing {

/// A pair that may be formed. Nodes count from 0, u ≠ v; parallel edges may stand, the best of them counts.
struct Edge {
    int u;
    int v;
    std::int64_t weight; ///< any sign, magnitude at most kMaxWeight
};

constexpr std::int64_t kMaxWeight = std::int64_t{1} << 48;

/// An odd set of nodes (3 or more) with a dual value above 0.
struct Blossom {
    std::vector<int> nodes; ///< ascending
    std::int64_t dual;      ///< in 1/dualScale of a weight
};

/// A matching, and the duals that prove that none weighs more. With
/// cover(e) = nodeDual[u] + nodeDual[v] + the duals of the blossoms that hold both u and v + price:
///  - each dual, and price, is ≥ 0;
///  - cover(e) ≥ dualScale · weight(e) for each edge, with equality for each chosen one;
///  - Σ nodeDual + Σ dual · (size − 1) / 2 over the blossoms + price · N = dualScale · weight,
///    N being the most edges allowed (where that number does not limit the sum, price is 0).
struct Matching {
    std::vector<int> mate;   ///< by node: its partner, or -1 where it stays alone
    std::int64_t weight = 0; ///< the sum over the chosen edges
    std::int64_t dualScale = 1;
    std::vector<std::int64_t> nodeDual; ///< by node, in 1/dualScale of a weight
    std::vector<Blossom> blossoms;
    std::int64_t price = 0; ///< what one edge more would be worth at most, in 1/dualScale of a weight

    int size() const; ///< edges chosen
};

/// A matching of the greatest sum of weights (not of the most edges) on any graph of `nodes` nodes, odd circles
/// included. Edges of weight ≤ 0 are never chosen. The same nodes and the same edges in the same order give the same
/// matching. Works component by component; O(n · m · log n) for one of n nodes and m edges.
Matching maxWeightMatching(int nodes, const std::vector<Edge>& edges);

/// The same with at most `most` (≥ 0) edges, the sum still the greatest that so few can reach; the very same where
/// `most` is no limit. Costs up to log2(greatest weight) times as much.
Matching maxWeightMatchingAtMost(int nodes, const std::vector<Edge>& edges, int most);

} // namespace core::pairing
