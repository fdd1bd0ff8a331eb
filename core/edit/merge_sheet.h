#pragma once

#include "core/edit/edit_context.h"
#include "core/model/snapshot.h"
#include "core/rules/plan.h"

#include <optional>
#include <vector>

// What is on the worksheet of a merge day.

namespace core::edit {

/// The strips that the plan gives for one of its yards, in the order of the worksheet: unions in the order of work,
/// then shake-outs. Ids, merge day and outcomes are not set.
std::vector<MergeStrip> stripsPlanned(const Snapshot& s, const rules::Plan& plan, YardIx yard);

/// The variant of that yard's merge day that stands, is planned by and written back: the one of which something is
/// written, else the one that went to paper, else the first; nullopt: none is in the book.
std::optional<MergeDay> standingDay(const EditContext& c, YardId yard, Day day);

} // namespace core::edit
