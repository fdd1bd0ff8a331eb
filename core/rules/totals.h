#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

namespace core::rules {

/// The sums of a plan whose unions and shake-outs stand. `living`: all of its yards, held ones too.
Totals totalsOf(const DayView& view, const Plan& plan, const std::vector<ColonyIx>& living);

} // namespace core::rules
