#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

#include <optional>

// Rule 4.13: colonies that can be divided (an assumption).

namespace core::rules {

/// Of a colony that is in no union.
std::optional<Divide> divideOf(const DayView& view, ColonyIx c);

} // namespace core::rules
