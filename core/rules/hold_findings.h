#pragma once

#include "core/model/snapshot.h"
#include "core/rules/hold_days.h"

namespace core::rules {

/// Signs and results by colony (one list by yard), each list ascending. Words as in rules 4.4.4, 4.4.11 and 4.4.12.
struct Findings {
    DaysBy signs;        ///< a sign afb, or a field positive for it
    DaysBy positives;    ///< afb, by laboratory or inspector
    DaysBy negatives;    ///< afb, by laboratory or inspector
    DaysBy releases;     ///< afb, naming the colony
    DaysBy yardReleases; ///< afb, naming the yard
    DaysBy efb;          ///< a sign efb, or an efb positive by any method
    DaysBy efbNegatives; ///< by laboratory or inspector
    DaysBy efbReleases;  ///< naming the colony
    DaysBy doubts;       ///< a sign brood-doubt
    DaysBy spoilers;     ///< what makes a check before it count no more: signs, positives, efb, doubts
};
Findings findingsOf(const Snapshot& s);

} // namespace core::rules
