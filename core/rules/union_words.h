#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"
#include "core/rules/roles.h"

#include <QStringList>

// Why a union is advised and how it is made, in a beekeeper's words.

namespace core::rules {

/// The reasons, most important first. `united` is complete but for its words.
QStringList unionReasons(const DayView& view, const Union& united, const Roles& roles);

/// The same as data: what both are, what the union gains, what the book asks. `united` is complete but for its words.
Reason unionReason(const DayView& view, const Union& united);

/// What to do at the hives, in order (rule 4.8).
QStringList unionSteps(const DayView& view, const Union& united);

} // namespace core::rules
