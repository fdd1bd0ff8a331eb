#pragma once

#include "core/edit/edit_context.h"

#include <optional>

// What edits of merge days, of their unions and of their divides check alike.

namespace core::edit {

/// The merge day of this id; refuses where there is none.
MergeDay needMergeDay(const EditContext& c, MergeDayId id);
/// That of the yard, day and variant, where there is one.
std::optional<MergeDay> mergeDayAt(const EditContext& c, YardId yard, Day day, int variant);
/// Refuses once something came of a union, shake-out or divide of it.
void needOpen(const EditContext& c, const MergeDay& day);
/// Refuses where the colony does not stand in the yard on that day.
void needStandsIn(const EditContext& c, ColonyId colony, YardId yard, Day day);
/// Refuses a yard that is not there, a variant that is none of 1 to 3, limits out of their range. With its note
/// trimmed.
MergeDay checkedMergeDay(const EditContext& c, const MergeDay& typed);
/// Refuses where the colony does not live on the day (the day of its end is none).
void needLivesOn(const EditContext& c, ColonyId colony, Day day);

} // namespace core::edit
