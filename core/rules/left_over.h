#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

// Why a colony is in no union and no shake-out, as data.

namespace core::rules {

/// Whether the day is in the yard's season for strength (4.3): only then is one that is left alone said to be at risk
/// over winter.
bool beforeWinter(const Snapshot& s, YardIx yard);

/// Its class, and what such a colony is expected to give.
Reason whyAlone(const DayView& view, ColonyIx c);
Reason whyUnresolved(const DayView& view, ColonyIx c, Unresolved why);
Reason whySeparate(const DayView& view, ColonyIx c);

/// The limits that make a class of a strength, and how counts from above and from below made it.
void addClassLimits(const DayView& view, ColonyIx c, Reason& why);

} // namespace core::rules
