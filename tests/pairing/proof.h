#pragma once

#include "core/pairing/assignment.h"
#include "core/pairing/matching.h"
#include "tests/pairing/graphs.h"

#include <vector>

namespace tests::pairing {

/// Each node has at most one partner, which has it; each pair is an edge; the weight is their sum; at most `most`
/// pairs.
void expectIsMatching(const Graph& graph, const core::pairing::Matching& matching, int most);

/// None weighs more: the duals are feasible, chosen edges are tight, and both sums agree (complementary slackness).
void expectProved(const Graph& graph, const core::pairing::Matching& matching, int most);

/// The same for an assignment: the answer keeps to the offers and the room, and its duals prove it.
void expectProved(int perHost, const std::vector<core::pairing::Offer>& offers,
                  const core::pairing::Assignment& answer);

} // namespace tests::pairing
