#pragma once

#include "core/base/day.h"
#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// One function an edit. Each reads what it needs through the context, checks the book's rules, and returns what to
// change. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

/// Carried that day to bare ground of its own yard at `to`: a new stand there (named by the yard's next free number),
/// or an empty stand that is there. `day` not before its last placement, within its life.
ChangeSet carryHive(const EditContext& c, ColonyId colony, MmPoint to, Day day);
/// A visit with all that was seen; its id is given. One a colony a day; ranges as the files' (Error(BadData) names the
/// field).
ChangeSet logVisit(const EditContext& c, const Visit& visit);
ChangeSet setSetting(const EditContext& c, const QString& name, const QString& value);

} // namespace core::edit
