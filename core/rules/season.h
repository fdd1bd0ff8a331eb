#pragma once

#include "core/base/day.h"
#include "core/model/settings.h"

namespace core::rules {

// Seasons and the half year of rule 4.0: in a yard of southern latitude every month named by a rule moves by six.

/// The day of the year that `md` names there: a day its month does not have becomes the month's last.
Day dayInYear(int year, MonthDay md, bool southern);

/// Whether `d` lies from `from` to `to`, both included. A season that would end before its start runs over the new
/// year.
bool inSeason(Day d, MonthDay from, MonthDay to, bool southern);

/// The latest start of a season on or before `d`.
Day latestStart(Day d, MonthDay start, bool southern);

/// The month 1..12 of `d`, in a southern yard moved by six: what a rule that names months compares with.
int northernMonth(Day d, bool southern);

} // namespace core::rules
