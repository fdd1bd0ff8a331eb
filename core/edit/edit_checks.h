#pragma once

#include "core/base/error.h"
#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"

#include <QCoreApplication>

#include <span>

// What several edits check.

namespace core::edit {

/// Translation context of the edits' sentences.
struct Edits {
    Q_DECLARE_TR_FUNCTIONS(Edits)
};

/// Throws Error(BadData).
[[noreturn]] void refuse(const QString& sentence);

/// The colony as outputs name it on a day: its label, or LABEL@SINCE where that names another.
QString shownName(const EditContext& c, const Colony& colony, Day day);

/// The colony of this id; refuses where there is none.
Colony needColony(const EditContext& c, ColonyId id);
Yard needYard(const EditContext& c, YardId id);
/// Refuses a day before its `since` or after its `ended`.
void needLife(const EditContext& c, const Colony& colony, Day day);

/// A label is unique among colonies on each day; one whose colony ended on a day is free from the next day. Refuses
/// where another has the colony's label on a day of its life.
void needFreeLabel(const EditContext& c, const Colony& colony);

/// Trimmed, 1 to 60 characters, no control characters; `what` names the field. A colony's holds no @.
QString checkedName(const QString& typed, const QString& what);
/// Refuses a value that is set and not in least..most.
/// Whether the visit says something of an upper box.
bool countsUpper(const Visit& v);
void checkRange(std::optional<int> value, int least, int most, const QString& field);

/// One more than the greatest number among the yard's stand names.
QString nextStandName(const std::vector<Stand>& stands);

/// Refuses where the hive of a colony that is none of `own` stands, from that day on, on the stand or nearer to it than
/// kStandApartMm.
void needBareGround(const EditContext& c, const std::vector<Stand>& stands, MmPoint at, std::span<const ColonyId> own,
                    Day day);

/// The stand as it bears a hive again; adds to the change that it is no longer taken away.
Stand standAgain(const Stand& old, ChangeSet& change);
/// Adds to the change: a stand that only this colony's placement made goes with it, where nothing else ever used it.
void dropStandOf(const EditContext& c, const Placement& only, ChangeSet& change);
/// Adds to the change: the colony's first place begins that day.
void moveFirstPlace(const EditContext& c, ColonyId colony, Day since, ChangeSet& change);

} // namespace core::edit
