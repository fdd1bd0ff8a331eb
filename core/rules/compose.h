#pragma once

#include "core/rules/cautions.h"
#include "core/rules/day_view.h"
#include "core/rules/plan.h"
#include "core/rules/shake_outs.h"
#include "core/rules/unions.h"

// A chosen pair or shake-out with all that the plan says of it.

namespace core::rules {

/// All but its order in the yard and its cautions.
Union composeUnion(const DayView& view, const ChosenPair& pair);

/// With its cautions.
ShakeOut composeShakeOut(const DayView& view, const Cautions& cautions, const ChosenShakeOut& chosen,
                         const std::vector<Union>& unions);

} // namespace core::rules
