#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// The people who keep the book, offered where a record asks by whom. Records hold names as text: nothing rests on a
// person's row. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

/// A name not among them without regard to case. One that is there and not active any more is offered again.
ChangeSet addPerson(const EditContext& c, const QString& name);
/// `now.id` names the person. Records keep the name that they were written with. Empty change: it says so already.
ChangeSet changePerson(const EditContext& c, const Person& now);
ChangeSet takeBackPerson(const EditContext& c, PersonId id);

} // namespace core::edit
