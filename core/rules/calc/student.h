#pragma once

#include "core/rules/calc/range.h"

namespace core::rules::calc {

/// Student's t: so many standard errors lie on each side of a mean, for an interval of that level. `freedom` >= 1: one
/// less than the number of values. Source: Student, The probable error of a mean, Biometrika 6, 1908 (from memory).
double studentT(int freedom, double level = kLevel);

} // namespace core::rules::calc
