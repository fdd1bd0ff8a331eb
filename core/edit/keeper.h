#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// Whose book it is: stands on the register and the report. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

/// Trimmed and in range: a name of 1 to 60 characters, a place of at most 60, an address of at most 500 on lines of its
/// own, the others at most 200. Throws.
Keeper checkedKeeper(const Keeper& typed);
/// Writes down the keeper, or puts right what is there; `now.id` is not read. Empty change: it says so already.
ChangeSet setKeeper(const EditContext& c, const Keeper& now);
/// Refuses where none is recorded.
ChangeSet takeBackKeeper(const EditContext& c);

} // namespace core::edit
