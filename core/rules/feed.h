#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

#include <optional>

// Rule 4.12: syrup for hives that are too light for winter.

namespace core::rules {

/// Of a colony that is neither united nor shaken out.
std::optional<Feed> feedOf(const DayView& view, ColonyIx c);
/// Of a union with two valid weights, under its host.
std::optional<Feed> feedOf(const DayView& view, const Union& united);

} // namespace core::rules
