#pragma once

#include "core/rules/hold_span.h"

#include <functional>
#include <vector>

namespace core::rules {

/// When one colony was held, to be looked at: judged on its first and last day, every `apart` days between them and on
/// each day with a record of its own; where that differs, day by day until the change is found. A hold that comes and
/// goes between two such days is not seen, so nothing may rest on this: holds() of a day says what holds.
/// `whole`: read as Session::snapshotForHolds() does. `stop`: asked before each day; true ends it at once, with
/// nothing.
std::vector<HoldSpan> holdsOverTime(const Snapshot& whole, ColonyId colony, Day first, Day last, int apart,
                                    const std::function<bool()>& stop = {});

} // namespace core::rules
