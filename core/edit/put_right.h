#pragma once

#include "core/base/day.h"
#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

#include <optional>

// Edits of what is in the book already: one function an edit. Each judges the record as if it were new, with all that
// rests on it. Throws Error(BadData) with one sentence where it cannot be: what is wrong, or which record rests on it.
// "Taken back": the record is gone from the book and stays readable in its history. Whether a foulbrood hold rests on
// it is the Session's to ask (Error(Correction)).

namespace core::edit {

// `now.id` names the record. Empty change: it says so already.
ChangeSet changeYard(const EditContext& c, const Yard& now);
ChangeSet changeColony(const EditContext& c, const Colony& now); ///< not its end; `since` moves its first placement too
ChangeSet changeVisit(const EditContext& c, const Visit& now);   ///< its colony stays
ChangeSet changeTransfer(const EditContext& c, const Transfer& now);
ChangeSet changeResult(const EditContext& c, const Result& now);
ChangeSet changeTreatment(const EditContext& c, const Treatment& now);
/// Day, by and note; of a union or shake-out its day is the colony's end too, of a divide the beginning of `into`.
/// Throws Error(Hold) as recordUnion() and recordDivide() do, where a colony is held on a day that is new.
ChangeSet changeLineage(const EditContext& c, const Lineage& now);
/// How and when it ended; not of a union or shake-out, whose lineage says so.
ChangeSet changeEnd(const EditContext& c, ColonyId colony, Day day, EndKind how);

/// How a place is told anew.
struct PlaceChange {
    Stand stand; ///< id 0: a new one of stand.yard at stand.at (or that which is there), name empty: next free number
    std::optional<int> headingDeg; ///< 0..359
    Day since;
};
/// Where, how turned and (of a carry) when; the place before ends on the new day. The first place's day is the
/// colony's `since`. A stand that came with the placement alone, and bears nothing else, goes.
ChangeSet changePlacement(const EditContext& c, PlacementId id, const PlaceChange& now);
/// changeColony() and its first place in one; place.since is not read.
ChangeSet changeBeginning(const EditContext& c, const Colony& now, const PlaceChange& place);

ChangeSet takeBackVisit(const EditContext& c, VisitId id);
ChangeSet takeBackTransfer(const EditContext& c, TransferId id);
ChangeSet takeBackResult(const EditContext& c, ResultId id);
ChangeSet takeBackTreatment(const EditContext& c, TreatmentId id);
/// A union or shake-out: the colony lives again where it stood. A divide: the line that names the mother goes.
ChangeSet takeBackLineage(const EditContext& c, LineageId id);
/// It lives again where it stood last. Not of a union or shake-out.
ChangeSet takeBackEnd(const EditContext& c, ColonyId colony);
/// A carry: it stands where it stood before. The first placement is the colony's own and goes with it alone.
ChangeSet takeBackCarry(const EditContext& c, PlacementId id);
/// A colony that no record names: with its first placement, and its stand where that came with it and bears nothing.
ChangeSet takeBackColony(const EditContext& c, ColonyId id);
/// A yard without stands; a stand that never bore a hive.
ChangeSet takeBackYard(const EditContext& c, YardId id);
ChangeSet takeBackStand(const EditContext& c, StandId id);

// The users' own box kinds; those that come with every book stay as they are.

/// Ids are given.
ChangeSet newBoxKind(const EditContext& c, const BoxKind& kind);
/// Not fewer frames than a visit of a colony in such a box counts.
ChangeSet changeBoxKind(const EditContext& c, const BoxKind& now);
/// One that no colony is in.
ChangeSet takeBackBoxKind(const EditContext& c, BoxKindId id);

} // namespace core::edit
