#pragma once

#include "core/edit/merge_day.h"
#include "core/edit/session.h"
#include "core/rules/plan.h"

#include <vector>

// That a worksheet went to paper, as edits.

namespace core::edit {

/// What was on it, of one yard.
struct PrintedSheet {
    YardId yard;
    Day day;
    int variant = 1; ///< of the merge day
    std::vector<MergeStrip> strips;
    std::vector<DivideStrip> divides;
    bool empty() const { return strips.empty() && divides.empty(); }
};

/// What the plan of its day has for that yard, in the worksheet's order. `saved`: the merge day it was planned by.
PrintedSheet printedSheet(const Snapshot& s, const rules::Plan& plan, YardIx yard,
                          const std::optional<MergeDay>& saved);

/// For Session::applyInTurn, as one edit: where no merge day of that variant is saved one is, which asks nothing; then
/// its strips and its divides. No change where just these are there. Each refuses once something came of a strip.
std::vector<Edit> recordPrint(const PrintedSheet& printed);

/// Whether something came of a strip of that day: then what was printed stays as it was.
bool closingBegan(const Session& book, YardId yard, Day day);

} // namespace core::edit
