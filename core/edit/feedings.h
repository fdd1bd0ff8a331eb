#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

#include <vector>

// Feed given. No rule reads it: no hold rests on a feeding, and the feed that a colony needs goes by its weight (rule
// 4.12). Frames of stores from another hive are a transfer: holds follow transfers. Throws Error(BadData) with one
// sentence where it cannot be.

namespace core::edit {

/// The ids are given.
ChangeSet logFeeding(const EditContext& c, const Feeding& feeding);
/// Each of its own colony and day; one undo. Empty: none.
ChangeSet logFeedings(const EditContext& c, const std::vector<Feeding>& feedings);
ChangeSet changeFeeding(const EditContext& c, const Feeding& now); ///< `now.id` names it
ChangeSet takeBackFeeding(const EditContext& c, FeedingId id);

} // namespace core::edit
