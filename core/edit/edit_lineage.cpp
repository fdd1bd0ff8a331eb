#include "core/edit/edit_checks.h"
#include "core/edit/edit_ending.h"
#include "core/edit/held.h"
#include "core/edit/judge.h"
#include "core/edit/kit_freed.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

Lineage needLineage(const EditContext& c, LineageId id) {
    auto lineage = c.find<Lineage>(id.value);
    if (!lineage) refuse(Edits::tr("That record is no longer in the book."));
    return *std::move(lineage);
}

QString nameOf(const EditContext& c, const Lineage& l) {
    const QString from = shownName(c, needColony(c, l.colony), l.day);
    const QString into = shownName(c, needColony(c, l.into), l.day);
    switch (l.how) {
    case LineageHow::United:
        return Edits::tr("the union of %1 into %2 on %3").arg(from, into, isoText(l.day));
    case LineageHow::ShakenOut:
        return Edits::tr("the shake-out of %1 into %2 on %3").arg(from, into, isoText(l.day));
    case LineageHow::Divided:
        break;
    }
    return Edits::tr("the divide of %1 that made %2 on %3").arg(from, into, isoText(l.day));
}

/// A divide's day is the beginning of what it made; any other's the end of its colony.
void moveDay(const EditContext& c, const Lineage& old, Day day, ChangeSet& change) {
    if (old.how != LineageHow::Divided) {
        const Colony colony = needColony(c, old.colony);
        moveEnd(c, colony, day, colony.end, change);
        return;
    }
    const Colony made = needColony(c, old.into);
    Colony now = made;
    now.since = day;
    moveFirstPlace(c, made.id, day, change);
    change.rows.push_back(changed(made, now));
}

} // namespace

ChangeSet changeLineage(const EditContext& c, const Lineage& typed) {
    const Lineage old = needLineage(c, typed.id);
    if (typed.how != old.how || typed.colony != old.colony || typed.into != old.into)
        refuse(Edits::tr("What was done, and to which colonies, stays: take it back and record it anew."));
    Lineage now = typed;
    now.by = typed.by.trimmed();
    now.note = typed.note.trimmed();
    if (now == old) return {};
    ChangeSet change;
    if (now.day != old.day) moveDay(c, old, now.day, change);
    change.rows.push_back(changed(old, now));
    judge(c, change.rows);
    // What came of a divide does not exist before it.
    if (now.day != old.day && now.how == LineageHow::Divided) refuseHeld(c, {now.colony}, now.day);
    if (now.day != old.day && now.how != LineageHow::Divided) refuseHeld(c, {now.colony, now.into}, now.day);
    change.text = old.day == now.day ? Edits::tr("Changed %1").arg(nameOf(c, old))
                                     : Edits::tr("Moved %1 to %2").arg(nameOf(c, old), isoText(now.day));
    return change;
}

ChangeSet takeBackLineage(const EditContext& c, LineageId id) {
    const Lineage old = needLineage(c, id);
    ChangeSet change;
    change.rows.push_back(deleted(old));
    if (old.how != LineageHow::Divided) liveAgain(c, needColony(c, old.colony), change);
    judge(c, change.rows);
    change.text = Edits::tr("Took back %1").arg(nameOf(c, old));
    if (old.how != LineageHow::Divided) takeKitBack(c, old, change);
    return change;
}

} // namespace core::edit
