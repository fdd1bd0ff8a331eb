#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

#include <optional>

// Queens at the head of colonies: one at a time. The year that the colony's own row tells (Colony::queenBorn, the
// files' queen_born) follows the latest of them in the same change. No rule reads a queen's row, and no hold rests on
// one. Throws Error(BadData) with one sentence where it cannot be.
//
// What a colony's end means for her: nothing is guessed. Her row stays open when the colony dies, is united, shaken
// out, sold or destroyed: she headed it to its end (headedUntil()), and what became of her is written down by who knows
// it, as a fate or as a move to another colony. A divide leaves her with the colony that keeps its stand until a move
// says otherwise. So an end, a union or a divide taken back leaves nothing to be mended.

namespace core::edit {

/// What became of the queen before: on the day that the new one begins, where no other is given.
struct QueenBefore {
    QueenFate fate = QueenFate::Replaced;
    std::optional<Day> until;
};

/// The colony is headed by her from `queen.since` on; her id is given. Where one heads it still, `before` says what
/// became of that one. One who came before others needs her own until and fate.
ChangeSet newQueen(const EditContext& c, const Queen& queen, const std::optional<QueenBefore>& before = {});
/// What became of the one that heads the colony on that day or to its end.
ChangeSet endQueen(const EditContext& c, QueenId id, Day day, QueenFate fate);
/// `now.id` names the row; her colony stays. Without until and fate she heads it still.
ChangeSet changeQueen(const EditContext& c, const Queen& now);
/// Her row goes. The one before heads the colony again where she had given way to her that day: superseded or replaced.
ChangeSet takeBackQueen(const EditContext& c, QueenId id);
/// She heads it again, or headed it to its end.
ChangeSet takeBackQueenEnd(const EditContext& c, QueenId id);
/// From that day on she heads another colony: her row ends as moved, hers there says the same of her. Of a colony that
/// ended, up to the day of its end. `before` as in newQueen(), of the colony that she comes to.
ChangeSet moveQueen(const EditContext& c, QueenId id, ColonyId to, Day day,
                    const std::optional<QueenBefore>& before = {});

/// The last day that she headed the colony: her own until, else the colony's end. nullopt: she heads it.
inline std::optional<Day> headedUntil(const Queen& queen, const std::optional<Day>& colonyEnded) {
    return queen.until ? queen.until : colonyEnded;
}

/// Adds to the change: the year that `colony` tells follows the latest of its queens once `change.rows` are written.
/// `colony`: as the change leaves it.
void tellQueensYear(const EditContext& c, const Colony& colony, ChangeSet& change);

} // namespace core::edit
