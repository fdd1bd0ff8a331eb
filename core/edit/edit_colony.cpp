#include "core/edit/edit_checks.h"
#include "core/edit/edit_ending.h"
#include "core/edit/edits.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

/// The stand the colony begins on: one of the book, or a new one that the change makes.
Stand firstStand(const EditContext& c, const Stand& asked, ChangeSet& change) {
    if (asked.id.value > 0) {
        const auto old = c.stand(asked.id);
        if (!old) refuse(Edits::tr("That stand is no longer in the book."));
        Stand now = *old;
        now.removed = false;
        if (old->removed) change.rows.push_back(changed(*old, now));
        return now;
    }
    ChangeSet made = addStand(c, asked.yard, asked.name, asked.at);
    change.rows = std::move(made.rows);
    return fromRow<Stand>(change.rows.back().id, *change.rows.back().after);
}

/// A label is unique among colonies on each day; one whose colony ended on a day is free from the next day.
void needFreeLabel(const EditContext& c, const Colony& colony) {
    for (const Colony& other : c.coloniesLabelled(colony.label)) {
        const bool before = other.ended && *other.ended < colony.since;
        const bool after = colony.ended && *colony.ended < other.since;
        if (before || after) continue;
        refuse(
            other.ended
                ? Edits::tr("%1 is the label of a colony that lived from %2 to %3.")
                      .arg(other.label, isoText(other.since), isoText(*other.ended))
                : Edits::tr("%1 is the label of a colony that lives since %2.").arg(other.label, isoText(other.since)));
    }
}

Colony checkedColony(const EditContext& c, const Colony& typed) {
    constexpr int kFirstYear = 1990;
    constexpr int kLastYear = 2100;
    Colony colony = typed;
    colony.id = ColonyId{c.nextId(Table::Colony)};
    colony.label = checkedName(typed.label, Edits::tr("Colony"));
    if (colony.label.contains(u'@')) refuse(Edits::tr("Colony: a label holds no @."));
    colony.note = typed.note.trimmed();
    if (colony.ended || colony.end) refuse(Edits::tr("A new colony has no end yet."));
    checkRange(colony.broodBoxes, 1, 2, Edits::tr("Brood boxes"));
    checkRange(colony.queenBorn, kFirstYear, kLastYear, Edits::tr("Year of the queen"));
    if (!c.boxKind(colony.box)) refuse(Edits::tr("That box kind is not in the book."));
    needFreeLabel(c, colony);
    return colony;
}

} // namespace

ChangeSet addColony(const EditContext& c, const NewColony& asked) {
    constexpr int kLastHeading = 359;
    const Colony colony = checkedColony(c, asked.colony);
    checkRange(asked.headingDeg, 0, kLastHeading, Edits::tr("Heading"));
    ChangeSet change;
    const Stand stand = firstStand(c, asked.stand, change);
    const Yard yard = needYard(c, stand.yard);
    needBareGround(c, c.standsOf(stand.yard), stand.at, colony.id, colony.since);
    change.text = Edits::tr("Added %1 on stand %2 of %3").arg(colony.label, stand.name, yard.name);
    change.rows.push_back(added(colony));
    change.rows.push_back(added(Placement{PlacementId{c.nextId(Table::Placement)}, colony.id, stand.id,
                                          asked.headingDeg, colony.since, std::nullopt, true}));
    return change;
}

ChangeSet endColony(const EditContext& c, ColonyId id, Day day, EndKind how) {
    if (how == EndKind::United || how == EndKind::ShakenOut)
        refuse(Edits::tr("A union or shake-out is recorded with the colony that took the bees."));
    const Colony colony = needColony(c, id);
    const QString name = shownName(c, colony, day);
    ChangeSet change;
    endOn(c, colony, day, how, change);
    switch (how) {
    case EndKind::Destroyed:
        change.text = Edits::tr("%1 was destroyed on %2").arg(name, isoText(day));
        break;
    case EndKind::Sold:
        change.text = Edits::tr("%1 was sold on %2").arg(name, isoText(day));
        break;
    default:
        change.text = Edits::tr("%1 was found dead on %2").arg(name, isoText(day));
        break;
    }
    return change;
}

} // namespace core::edit
