#pragma once

#include "core/pairing/assignment.h"
#include "core/pairing/matching.h"

#include <cstdint>
#include <random>
#include <vector>

namespace tests::pairing {

/// A graph to match on; `seed` names it where a check fails.
struct Graph {
    unsigned seed = 0;
    int nodes = 0;
    std::vector<core::pairing::Edge> edges;
};

/// Whole numbers from `low` to `high`, both included; the same on each machine.
int pick(std::mt19937& random, int low, int high);

/// Up to `mostNodes` nodes and any number of edges, parallel ones too. By seed: few different weights (so that ties are
/// common) or many, with zeros and negative ones among them, in one part or in several.
Graph randomGraph(unsigned seed, int mostNodes);

/// Odd circles in a row, each joined to the next by one edge, with chords: what needs blossoms, and blossoms in
/// blossoms.
Graph circleGraph(unsigned seed, int circles);

/// Two hives of a yard may be joined the better the nearer they stand: each with each, in metres.
Graph yardGraph(unsigned seed, int nodes);

/// Offers of any sign to some or to most hosts, some of them twice.
std::vector<core::pairing::Offer> randomOffers(std::mt19937& random, int guests, int hosts);

/// By number of edges k, the greatest sum of exactly k edges that share no node, found by trying all; as far as k
/// exist.
std::vector<std::int64_t> greatestSums(const Graph& graph);

} // namespace tests::pairing
