#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

#include <optional>
#include <vector>

// Rule 4.11: which of two brood boxes belongs on top.

namespace core::rules {

/// What is to be done with the boxes of a colony that is neither united nor shaken out; by season both may be.
std::vector<BoxOrderAdvice> boxOrderOf(const DayView& view, ColonyIx c);

} // namespace core::rules
