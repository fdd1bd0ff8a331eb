#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/judge.h"
#include "core/edit/put_right.h"
#include "core/edit/queen_checks.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

/// The stand the colony begins on: one of the book, or a new one that the change makes.
Stand firstStand(const EditContext& c, const Stand& asked, ChangeSet& change) {
    if (asked.id.value > 0) {
        const auto old = c.stand(asked.id);
        if (!old) refuse(Edits::tr("That stand is no longer in the book."));
        return standAgain(*old, change);
    }
    ChangeSet made = addStand(c, asked.yard, asked.name, asked.at);
    change.rows = std::move(made.rows);
    return fromRow<Stand>(change.rows.back().id, *change.rows.back().after);
}

/// What is typed of a colony, new or not; its id is set.
Colony checkedColony(const EditContext& c, const Colony& typed) {
    constexpr int kFirstYear = 1990;
    constexpr int kLastYear = 2100;
    Colony colony = typed;
    colony.label = checkedName(typed.label, Edits::tr("Colony"));
    if (colony.label.contains(u'@')) refuse(Edits::tr("Colony: a label holds no @."));
    colony.note = typed.note.trimmed();
    checkRange(colony.broodBoxes, 1, 2, Edits::tr("Brood boxes"));
    checkRange(colony.queenBorn, kFirstYear, kLastYear, Edits::tr("Year of the queen"));
    if (!c.boxKind(colony.box)) refuse(Edits::tr("That box kind is not in the book."));
    needFreeLabel(c, colony);
    return colony;
}

/// Its first place begins with it. A divide says when what it made began.
void moveBeginning(const EditContext& c, const Colony& colony, Day since, ChangeSet& change) {
    for (const Lineage& l : c.lineageOf(colony.id))
        if (l.into == colony.id && l.how == LineageHow::Divided)
            refuse(Edits::tr("%1 came of a divide of %2 on %3; it begins that day.")
                       .arg(shownName(c, colony, colony.since), shownName(c, needColony(c, l.colony), l.day),
                            isoText(l.day)));
    moveFirstPlace(c, colony.id, since, change);
}

/// The year that is put right on the colony is that of its latest queen.
void putYearRight(const EditContext& c, const Colony& old, const Colony& now, ChangeSet& change) {
    const auto queens = c.queensOf(now.id);
    if (now.queenBorn == old.queenBorn || queens.empty() || queens.back().born == now.queenBorn) return;
    Queen queen = queens.back();
    queen.born = now.queenBorn;
    change.rows.push_back(changed(queens.back(), checkedQueen(c, queen)));
}

QString changedText(const EditContext& c, const Colony& old, const Colony& now) {
    if (old.label != now.label) return Edits::tr("Renamed %1 to %2").arg(old.label, now.label);
    if (old.since != now.since)
        return Edits::tr("Put right that %1 began on %2 (was %3)")
            .arg(shownName(c, old, old.since), isoText(now.since), isoText(old.since));
    return Edits::tr("Changed %1").arg(shownName(c, old, old.since));
}

} // namespace

ChangeSet addColony(const EditContext& c, const NewColony& asked) {
    constexpr int kLastHeading = 359;
    Colony typed = asked.colony;
    typed.id = ColonyId{c.nextId(Table::Colony)};
    if (typed.ended || typed.end) refuse(Edits::tr("A new colony has no end yet."));
    const Colony colony = checkedColony(c, typed);
    checkRange(asked.headingDeg, 0, kLastHeading, Edits::tr("Heading"));
    ChangeSet change;
    const Stand stand = firstStand(c, asked.stand, change);
    const Yard yard = needYard(c, stand.yard);
    needBareGround(c, c.standsOf(stand.yard), stand.at, {&colony.id, 1}, colony.since);
    change.text = Edits::tr("Added %1 on stand %2 of %3").arg(colony.label, stand.name, yard.name);
    change.rows.push_back(added(colony));
    change.rows.push_back(added(Placement{PlacementId{c.nextId(Table::Placement)}, colony.id, stand.id,
                                          asked.headingDeg, colony.since, std::nullopt, true}));
    return change;
}

ChangeSet changeColony(const EditContext& c, const Colony& typed) {
    const Colony old = needColony(c, typed.id);
    Colony now = typed;
    now.ended = old.ended;
    now.end = old.end;
    now = checkedColony(c, now);
    if (now == old) return {};
    ChangeSet change;
    if (now.since != old.since) moveBeginning(c, old, now.since, change);
    putYearRight(c, old, now, change);
    change.rows.push_back(changed(old, now));
    judge(c, change.rows);
    change.text = changedText(c, old, now);
    return change;
}

} // namespace core::edit
