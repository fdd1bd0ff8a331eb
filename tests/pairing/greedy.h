#pragma once

#include "core/pairing/matching.h"

#include <cstdint>
#include <vector>

namespace tests::pairing {

/// What is had by always taking the heaviest edge that is left (of equal ones that of the lower nodes), while it is
/// worth more than nothing.
std::int64_t greedySum(int nodes, std::vector<core::pairing::Edge> edges);

} // namespace tests::pairing
