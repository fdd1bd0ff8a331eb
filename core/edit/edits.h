#pragma once

#include "core/base/day.h"
#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// One function an edit. Each reads what it needs through the context, checks the book's rules, and returns what to
// change. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

// The yard plan.

/// Carried that day to bare ground of its own yard at `to`: a new stand there (named by the yard's next free number),
/// or an empty stand that is there. `day` not before its last placement, within its life. A second carry of one day
/// replaces the first; carried back to where it stood before, the carry is gone. Empty: it stands there already.
ChangeSet carryHive(const EditContext& c, ColonyId colony, MmPoint to, Day day);
/// A carry as it is typed: to a place of any yard, turned where a heading is given (0..359).
struct CarryTo {
    ColonyId colony;
    YardId yard;
    MmPoint to;
    std::optional<int> headingDeg;
    Day day;
};
/// As carryHive, and from yard to yard. From yard to yard while a foulbrood or order hold stands in either: only as a
/// fact (ChangeSet::against, rule 4.15).
ChangeSet carryTo(const EditContext& c, const CarryTo& carry);
/// Several at once, on one day: each may take the place that another of them leaves. Those that stand there already
/// are passed over.
ChangeSet carryHives(const EditContext& c, const std::vector<CarryTo>& carries);
/// Each on the other's place, within one yard; both look where they looked before.
ChangeSet swapHives(const EditContext& c, ColonyId one, ColonyId other, Day day);
/// A hive closer to another's stand than this may not be set down (millimetres).
constexpr int kStandApartMm = 300;

/// `name` empty: the yard's next free number. No other stand there.
ChangeSet addStand(const EditContext& c, YardId yard, const QString& name, MmPoint at);
/// Ids are given. `yard.name` is unique without regard to case.
ChangeSet newYard(const EditContext& c, const Yard& yard);

// Colonies.

/// A colony begins on a stand of a yard: an existing one that is empty from that day on, or (no id) a new one.
struct NewColony {
    Colony colony; ///< its id is given
    Stand stand;   ///< id 0: a new one, name empty: the next free number
    std::optional<int> headingDeg;
};
ChangeSet addColony(const EditContext& c, const NewColony& colony);
/// Dead, destroyed or sold. (United and shaken out: recordUnion.)
ChangeSet endColony(const EditContext& c, ColonyId colony, Day day, EndKind how);
/// united or shaken-out: `colony` ends that day, its place is free, its bees are `into`'s. Throws Error(Hold) with the
/// hold's sentence where either is held that day.
ChangeSet recordUnion(const EditContext& c, const Lineage& lineage);

/// The same without asking for holds: for an edit that asks by itself, or takes them as ChangeSet::against.
ChangeSet recordUnionWhateverHolds(const EditContext& c, const Lineage& lineage);

/// A divide: `made` begins that day (its `since`) as a colony of its own, `from` lives on; the lineage says so.
struct Divide {
    ColonyId from;
    NewColony made;
    QString by;
    QString note;
};
/// Throws Error(Hold) with the hold's sentence where `from` is held that day.
ChangeSet recordDivide(const EditContext& c, const Divide& divide);

/// The same without asking for holds: for an edit that asks by itself, or takes them as ChangeSet::against.
ChangeSet recordDivideWhateverHolds(const EditContext& c, const Divide& divide);

// Records. Their ids are given.

/// A visit with all that was seen. One a colony a day; ranges as the files' (Error(BadData) names the field).
ChangeSet logVisit(const EditContext& c, const Visit& visit);
ChangeSet logTransfer(const EditContext& c, const Transfer& transfer);
ChangeSet logResult(const EditContext& c, const Result& result);
ChangeSet logTreatment(const EditContext& c, const Treatment& treatment);

/// Hold settings only become stricter. `value` as users type it; the book keeps the canonical text, and no row for a
/// default.
ChangeSet setSetting(const EditContext& c, const QString& name, const QString& value);

} // namespace core::edit
