#pragma once

#include "core/model/snapshot.h"

#include <optional>
#include <span>

// Rule 4.2: what is known of the queen.

namespace core::rules {

/// `seen`: visits with a queen value, oldest first. Those on or before `freshStart` are no longer valid.
QueenSeen queenOn(Day on, std::span<const SnapQueen> seen, std::optional<Day> freshStart, const Settings& settings);

inline bool lacksQueen(QueenSeen queen) { return queen == QueenSeen::None || queen == QueenSeen::DroneLayer; }

} // namespace core::rules
