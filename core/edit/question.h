#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// Questions kept under a name (core/rules/question.h says what they ask). Nothing rests on one. Throws Error(BadData)
// with one sentence where it cannot be.

namespace core::edit {

/// Keeps a new question; its id is given here. Its name is not among them without regard to case.
ChangeSet keepQuestion(const EditContext& c, const Question& typed);
/// `now.id` names the question. Empty change: it says so already.
ChangeSet changeQuestion(const EditContext& c, const Question& now);
ChangeSet takeBackQuestion(const EditContext& c, QuestionId id);

} // namespace core::edit
