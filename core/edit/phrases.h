#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// Quick sentences: what is often written in notes, behind a brief word that stands for it. Nothing rests on them; a
// note holds the sentence itself. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

/// The brief word: 1 to 12 characters without spaces, not among them without regard to case. The sentence: 1 to 500
/// characters.
ChangeSet addPhrase(const EditContext& c, const QString& brief, const QString& sentence);
/// `now.id` names it. Empty change: it says so already.
ChangeSet changePhrase(const EditContext& c, const Phrase& now);
ChangeSet takeBackPhrase(const EditContext& c, PhraseId id);

} // namespace core::edit
