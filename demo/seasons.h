#pragma once

#include "core/model/rows.h"
#include "demo/chance.h"
#include "demo/demo_book.h"

#include <vector>

namespace demo {

/// The plain visits of a colony over the years: ten a full year, fewer in the last.
struct Rounds {
    int years = 2;
    int lastYear = 9; ///< nine come before the merge day
    int count() const { return (years - 1) * 10 + lastYear; }
};

/// Visit `n` (0-based, in time order) of colony number `colony` in yard number `yard`; ids are the caller's.
core::Visit plainVisit(const Rounds& rounds, int n, int yard, int colony, std::uint64_t seed);

/// A colony's strength at its fall count, in quarter frames: what the plain visits grow to and shrink from.
int fallQuarters(int colony, std::uint64_t seed);

} // namespace demo
