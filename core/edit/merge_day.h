#pragma once

#include "core/base/day.h"
#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/edit/session.h"
#include "core/model/rows.h"

#include <optional>
#include <vector>

// Merge days: what is asked of a plan, what was printed of it, and what came of each strip. Throws Error(BadData) with
// one sentence where it cannot be.

namespace core::edit {

/// One way to plan the merge day of a yard. `choices`: those that are to stand; their ids and merge day are given.
struct MergeAsked {
    MergeDay day;
    std::vector<MergeChoice> choices;
};

/// Keeps what is asked: a new one (`day.id` 0; one a yard, day and variant), or another revision of one that is there.
/// Colonies live on the day; a pair is not both pinned and forbidden, a colony not in two pins nor pinned and left out.
/// Refused once something came of a strip. Empty change: it says so already.
ChangeSet saveMergeDay(const EditContext& c, const MergeAsked& asked);

/// What goes to paper, in the order of the worksheet; ids, merge day, positions, outcomes and notes are given. Strips
/// of an earlier print go, those of the day's other variants too. Refused once something came of one. Empty change:
/// just these are there.
ChangeSet printMergeDay(const EditContext& c, MergeDayId id, const std::vector<MergeStrip>& strips);

/// With what was asked and printed. Refused once something came of a strip.
ChangeSet takeBackMergeDay(const EditContext& c, MergeDayId id);

/// Strips that never were on the worksheet are kept behind those that were.
constexpr int kOffSheet = 1'000'000;
inline bool onSheet(const MergeStrip& strip) { return strip.position <= kOffSheet; }

/// What was done in the place of a strip.
struct DoneInstead {
    LineageHow how = LineageHow::United; ///< united or shaken-out
    ColonyId moved, host;
    friend bool operator==(const DoneInstead&, const DoneInstead&) = default;
};

/// What came of one strip of the worksheet, or of one that never was on it.
struct StripClose {
    YardId yard;
    Day day;
    LineageHow how = LineageHow::United; ///< united or shaken-out
    ColonyId moved, host;
    StripOutcome outcome = StripOutcome::Done;
    QString note; ///< why not, or what instead; `changed` needs it
    QString by;
    std::optional<DoneInstead> instead = {}; ///< of `changed`: the union or shake-out it became; not set: none
};

/// Done writes the union or shake-out, changed the one that was done instead (of a colony that another strip carries,
/// it is refused: that strip is the one that changed); not done only what came of the strip. It is kept with the merge
/// day of that yard and day (the variant whose strip it is; where there is none, one is made). Refused: what came of
/// the strip is written already; and of a union done, what 4.7 1 to 4 or 6 bars, by its rule and sentence (a hold:
/// Error(Hold)).
ChangeSet closeStrip(const EditContext& c, const StripClose& strip);

/// The same for what was done though a rule bars it: a fact, and all that rests on it is held. The Session asks for a
/// reason and a name where something bars it (ChangeSet::against).
ChangeSet closeStripAsFact(const EditContext& c, const StripClose& strip);

/// What came of a strip is taken back, with the union or shake-out that it wrote: it is open again; one that never was
/// on the worksheet is gone.
ChangeSet reopenStrip(const EditContext& c, MergeStripId id);

} // namespace core::edit
