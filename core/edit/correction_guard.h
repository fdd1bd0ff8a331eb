#pragma once

#include "core/edit/change_set.h"
#include "core/model/snapshot.h"
#include "core/rules/hold.h"

#include <QString>

#include <map>
#include <set>
#include <utility>
#include <vector>

// Taking a record back is not how a disease hold ends. A change that alters or deletes records on which holds may rest
// is judged by the holds before and after it.

namespace core::edit {

/// It alters or deletes a row of those that holds are traced by. Adding a record never asks; nor does the end of an
/// open stay or of a living colony: those are records added. `placementsToo` false: its placements leave every hive in
/// the yards where it was (see sameYards).
bool touchesRecord(const ChangeSet& change, bool placementsToo);

/// The same of one row. False where nothing that a rule reads is altered: who, why, how many, a note.
bool rowMatters(const RowChange& change, bool placementsToo);

/// One hold of one day; of those traced to sources, one source of it.
struct StandingHold {
    ColonyId colony;
    rules::HoldKind kind = rules::HoldKind::Order;
    ColonyId source; ///< 0: of no source
    friend auto operator<=>(const StandingHold&, const StandingHold&) = default;
};

/// The holds of one day that no setting, undo or deletion may lift (all kinds but brood-not-checked), with the
/// shown names of the colony and of the source.
using StandingHolds = std::map<StandingHold, std::pair<QString, QString>>;
StandingHolds standingHolds(const Snapshot& s);

/// Those of `before` that are gone in the snapshot after, as "K5: afb-contact" ("K5: afb-contact by K7" where it stands
/// still by other sources). Not those of `ended`: colonies whose end is what the change adds.
QStringList liftedHolds(const StandingHolds& before, const Snapshot& after, const std::set<ColonyId>& ended = {});

/// The question that a correction answers: which holds would be gone on a day, or which begin with the record.
QString correctionSentence(const QStringList& lifted, Day on);
QString beginningSentence(const QStringList& beginning, Day on);

} // namespace core::edit
