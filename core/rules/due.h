#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

#include <vector>

// Rule 4.14: checks due, listed from 30 days before their day.

namespace core::rules {

/// For colonies of `yards` (natural order). By day, label, kind; each once.
std::vector<Due> dueChecks(const DayView& view, const std::vector<YardIx>& yards);

} // namespace core::rules
