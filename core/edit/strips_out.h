#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"

// What a treatment left in a hive comes out again. The row names the colony treated; where it was united since, the
// hive is its host's. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

ChangeSet logStripsOut(const EditContext& c, const StripsOut& out); ///< the id is given
/// Out of every hive that still has strips of this treatment in, that day. Refused where none has.
ChangeSet logStripsOutOfAll(const EditContext& c, TreatmentId treatment, Day day, const QString& by,
                            const QString& note);
ChangeSet changeStripsOut(const EditContext& c, const StripsOut& now); ///< `now.id` names it
ChangeSet takeBackStripsOut(const EditContext& c, StripsOutId id);

/// Adds to the change that the strips of this product that are in the hive, its own and of those united into it, came
/// out that day; nothing where the book knows of none.
void noteStripsOut(const EditContext& c, ColonyId hive, Day day, const QString& product, const QString& by,
                   ChangeSet& change);

/// Refuses where a record of strips out does not fit the treatment as it would be (nullopt: taken back).
void needStripsFit(const EditContext& c, TreatmentId id, const std::optional<Treatment>& now);

} // namespace core::edit
