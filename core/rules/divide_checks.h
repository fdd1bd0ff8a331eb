#pragma once

#include "core/model/snapshot.h"
#include "core/rules/divide_dates.h"

#include <span>
#include <vector>

// Looks at the new colonies of divides that are due. They are no part of rule 4.14 (contract, section 5): windows and
// paper list them beside it.

namespace core::rules {

/// How the colonies made of one that day came to queens: from the strips of merge days.
struct DivideDone {
    ColonyId mother;
    Day day;
    DivideQueens queens = DivideQueens::Own;
};

struct DivideDue {
    ColonyIx colony; ///< the new one
    ColonyIx mother;
    Day divided;
    DivideDate date;
    bool queensKnown = false; ///< not noted how it came to a queen: the days of one raised by the bees
};

/// Of living colonies that a divide made: each look from 30 days before its day to 60 days past it, until a visit on or
/// after the first day of its range says it: any for a cell or cage, one with a queen seen or eggs for eggs and brood,
/// or one on or after the day to look. Nothing of one that lacks a queen since. By day, then as the snapshot has them.
std::vector<DivideDue> divideChecks(const Snapshot& s, std::span<const DivideDone> done);

} // namespace core::rules
