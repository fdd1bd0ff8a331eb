#pragma once

#include "core/pairing/assignment.h"
#include "core/pairing/matching.h"

#include <string>
#include <vector>

namespace core::pairing {

/// What is not as `Matching` promises, in words for developers: it is no matching of at most `most` of these edges, or
/// its duals do not prove that none weighs more. Empty where all holds. Whole numbers alone, and nothing of the search
/// is used. Builds without NDEBUG ask this of every matching that they return. O(m · blossoms that hold a node).
std::string flawOf(int nodes, const std::vector<Edge>& edges, int most, const Matching& matching);

/// The same of an `Assignment`, the size of its bonus included. O(guests + hosts + offers).
std::string flawOf(int perHost, const std::vector<Offer>& offers, const Assignment& answer);

} // namespace core::pairing
