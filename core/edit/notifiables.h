#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// The book's own lines of what must be reported where (rules/notifiable.h): each stands in the place of the shipped
// line of the same place and disease. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

/// Trimmed and in range: a place of 1 to 60 characters, the others at most 200. Throws.
Notifiable checkedNotifiable(const Notifiable& typed);
/// `typed.id` is not read. No other own line is of the same place, without regard to case, and disease.
ChangeSet addNotifiable(const EditContext& c, const Notifiable& typed);
/// `now.id` names the line. Empty change: it says so already.
ChangeSet changeNotifiable(const EditContext& c, const Notifiable& now);
/// Where a shipped line is of the same place and disease, that one stands again.
ChangeSet takeBackNotifiable(const EditContext& c, NotifiableId id);

} // namespace core::edit
