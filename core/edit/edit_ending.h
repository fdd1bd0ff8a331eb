#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"

namespace core::edit {

/// Adds to the change: the colony ends that day, its place is free. Refuses a colony that has ended, a day outside its
/// life, and a day before a record that needs it alive.
void endOn(const EditContext& c, const Colony& colony, Day day, EndKind how, ChangeSet& change);

} // namespace core::edit
