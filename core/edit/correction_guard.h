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

/// The days of the rows that the change alters or deletes (not of its ranges).
std::set<Day> touchedDays(const ChangeSet& change);

/// The holds of one day that no setting, undo or deletion may lift (all kinds but brood-not-checked), with the
/// colony's shown name.
using StandingHolds = std::map<std::pair<ColonyId, rules::HoldKind>, QString>;
StandingHolds standingHolds(const Snapshot& s);

/// Those of `before` that are gone in the snapshot after, as "K5: afb-contact". The end of a colony that is still in
/// the book is not of these.
QStringList liftedHolds(const StandingHolds& before, const Snapshot& after);

/// The question that a correction answers.
QString correctionSentence(const QStringList& lifted, Day on);

} // namespace core::edit
