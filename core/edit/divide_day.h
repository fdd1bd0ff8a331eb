#pragma once

#include "core/edit/edits.h"

#include <optional>
#include <vector>

// The divides of a merge day: what is asked of them, what was printed, and what came of each. Throws Error(BadData)
// with one sentence where it cannot be.

namespace core::edit {

/// What is asked of the divides of a merge day; of its unions nothing is changed.
struct DividesAsked {
    YardId yard;
    Day day;
    int variant = 1;
    std::optional<DivideQueens> queens; ///< how the new colonies come to queens
    std::vector<DivideChoice> choices;  ///< those that are to stand; their ids and merge day are given
};

/// Keeps it as another revision of that merge day, or as a new one. Colonies live on the day, each is named once.
/// Refused once something came of a strip. Empty change: it says so already.
ChangeSet askDivides(const EditContext& c, const DividesAsked& asked);

/// The divides that go to paper, in the order of the worksheet; ids, merge day, positions, outcomes and notes are
/// given. Those of an earlier print go. Refused once something came of one. Empty change: just these are there.
ChangeSet printDivides(const EditContext& c, MergeDayId id, const std::vector<DivideStrip>& strips);

/// What came of one divide, on the worksheet or not.
struct DivideClose {
    YardId yard;
    Day day;
    ColonyId colony;                         ///< divided; lives on, on its stand
    DivideQueens queens = DivideQueens::Own; ///< as it was done
    StripOutcome outcome = StripOutcome::Done;
    std::vector<NewColony> made; ///< of a divide done, one or more: label, box, stand; `since` is given
    QString note;                ///< why not, or what instead; `changed` needs it
    QString by;
};

/// Done makes the new colonies and writes their lineage; the others only what came of the strip. It is kept with the
/// merge day of that yard and day (the variant whose strip it is; where there is none, one is made). Refused: what came
/// of it is written already; a colony that does not stand in the yard; a held one (Error(Hold)).
ChangeSet closeDivide(const EditContext& c, const DivideClose& divide);

/// The same for what was done though a hold bars it: a fact. The Session asks for a reason and a name where something
/// bars it (ChangeSet::against).
ChangeSet closeDivideAsFact(const EditContext& c, const DivideClose& divide);

} // namespace core::edit
