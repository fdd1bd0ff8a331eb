#pragma once

#include "core/model/snapshot.h"
#include "core/rules/facts.h"

#include <optional>

// Rule 4.1: strength, from the counts of bees of the latest valid visit that has any.

namespace core::rules {

/// Frames of bees of one box by its counts from above and from below; nullopt where there is neither.
std::optional<Quarters> boxBees(std::optional<Quarters> top, std::optional<Quarters> bottom, StrengthJudge judge);

struct Strength {
    std::optional<Quarters> quarters; ///< usable on the day
    NoStrength why = NoStrength::NoCount;
    std::optional<Quarters> counted; ///< even where it is too old
    std::optional<Quarters> lower, upper;
};

/// `count` is the latest valid one; nullptr where there is none.
Strength strengthOn(Day on, const SnapCount* count, const Settings& settings);

/// Of a strength above 0. Where the limits of the classes contradict each other, shake-out goes before strong, and
/// strong before medium.
StrengthClass classOf(Quarters strength, const Settings& settings);

} // namespace core::rules
