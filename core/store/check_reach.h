#pragma once

#include "core/model/snapshot.h"

#include <vector>

namespace core::store {

/// For each colony the day from which on its brood checks can matter to a hold on the snapshot's day; a day after the
/// snapshot's for none. Never too late, often too early. Reads all of `s` but its checks and latest.
/// - Unchecked (rule 4.4.10): 150 days back; of a colony that gave bees or comb, 150 days before each gift that counts.
/// - Answered, cleared, with efb, in doubt (rules 4.4.8 to 4.4.12): whoever may be linked to a sign or a positive, by
///   gifts, unions, divides or a yard, from the earliest day that its link may have.
std::vector<Day> checksNeededFrom(const Snapshot& s);

} // namespace core::store
