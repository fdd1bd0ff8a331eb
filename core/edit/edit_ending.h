#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"

namespace core::edit {

/// Adds to the change: the colony ends that day, its place is free. Refuses a colony that has ended, and a day outside
/// its life. Then judge() the whole change: a record may need it alive.
void endOn(const EditContext& c, const Colony& colony, Day day, EndKind how, ChangeSet& change);

/// Adds to the change: the colony ended that day, its last place with it; nullopt: it lives, and stands there.
/// Checks nothing.
void moveEnd(const EditContext& c, const Colony& colony, std::optional<Day> day, std::optional<EndKind> how,
             ChangeSet& change);
/// Adds to the change: the colony lives, where it stood last. Refuses where another hive came there since. Then judge()
/// the whole change: its label or its stand may be another's.
void liveAgain(const EditContext& c, const Colony& colony, ChangeSet& change);

} // namespace core::edit
