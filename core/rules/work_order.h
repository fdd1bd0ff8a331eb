#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

#include <vector>

// Rule 4.10: the order of work along a walk from the gate from host to host and back.

namespace core::rules {

/// Positions of the stops, each once, along a short walk from the gate and back. Stops come by label: of the two ways
/// round it is the one whose first stop has the label before.
std::vector<size_t> walkRound(MmPoint gate, const std::vector<MmPoint>& stops);

/// Sorts the unions by yard and then along its walk, and numbers them.
void orderWork(const DayView& view, std::vector<Union>& unions);

} // namespace core::rules
