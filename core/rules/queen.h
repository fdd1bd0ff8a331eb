#pragma once

#include "core/model/snapshot.h"

#include <optional>
#include <span>

// Rule 4.2: what is known of the queen.

namespace core::rules {

/// What was noted of the queen, and when; no day where nothing was.
struct QueenNote {
    QueenSeen queen = QueenSeen::Unknown;
    std::optional<Day> day;
};
/// The latest that counts. `seen`: visits with a queen value, oldest first. Those on or before `freshStart` are no
/// longer valid.
QueenNote latestQueen(std::span<const SnapQueen> seen, std::optional<Day> freshStart);
/// What is known of her on the day: one seen too long ago is unknown.
QueenSeen queenOn(Day on, const QueenNote& noted, const Settings& settings);

inline bool lacksQueen(QueenSeen queen) { return queen == QueenSeen::None || queen == QueenSeen::DroneLayer; }

} // namespace core::rules
