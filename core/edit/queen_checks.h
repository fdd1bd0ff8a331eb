#pragma once

#include "core/edit/queens.h"

// What the edits of queens check.

namespace core::edit {

Queen needQueen(const EditContext& c, QueenId id);
/// "the queen of A3 since 2025-05-01".
QString queenName(const EditContext& c, const Queen& queen);
/// What is typed of a queen, new or not, by itself; its id is set.
Queen checkedQueen(const EditContext& c, const Queen& typed);
/// Adds to the change: what became of the one that `now` comes after. Refuses where one heads the colony and `before`
/// is not given.
void giveWay(const EditContext& c, const Queen& now, const std::optional<QueenBefore>& before, ChangeSet& change);

} // namespace core::edit
