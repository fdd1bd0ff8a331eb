#include "core/edit/edit_ending.h"

#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/judge.h"
#include "core/edit/kit_freed.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"

namespace core::edit {

namespace {

QString endText(const QString& name, Day day, EndKind how) {
    switch (how) {
    case EndKind::Destroyed:
        return Edits::tr("%1 was destroyed on %2").arg(name, isoText(day));
    case EndKind::Sold:
        return Edits::tr("%1 was sold on %2").arg(name, isoText(day));
    default:
        return Edits::tr("%1 was found dead on %2").arg(name, isoText(day));
    }
}

void needOwnEnd(EndKind how) {
    if (how == EndKind::United || how == EndKind::ShakenOut)
        refuse(Edits::tr("A union or shake-out is recorded with the colony that took the bees."));
}

/// It has ended, and no union or shake-out says so.
Colony needEnded(const EditContext& c, ColonyId id) {
    Colony colony = needColony(c, id);
    if (!colony.ended) refuse(Edits::tr("%1 has not ended.").arg(colony.label));
    if (colony.end == EndKind::United || colony.end == EndKind::ShakenOut)
        refuse((colony.end == EndKind::United
                    ? Edits::tr("%1 ended in the union of %2; change that, or take it back.")
                    : Edits::tr("%1 ended in the shake-out of %2; change that, or take it back."))
                   .arg(shownName(c, colony, *colony.ended), isoText(*colony.ended)));
    return colony;
}

} // namespace

void moveEnd(const EditContext& c, const Colony& colony, std::optional<Day> day, std::optional<EndKind> how,
             ChangeSet& change) {
    const auto places = c.placementsOf(colony.id);
    if (!places.empty() && places.back().until != day) {
        Placement left = places.back();
        left.until = day;
        change.rows.push_back(changed(places.back(), left));
    }
    Colony now = colony;
    now.ended = day;
    now.end = how;
    if (now != colony) change.rows.push_back(changed(colony, now));
}

void endOn(const EditContext& c, const Colony& colony, Day day, EndKind how, ChangeSet& change) {
    if (colony.ended)
        refuse(Edits::tr("%1 ended on %2 already.").arg(shownName(c, colony, day), isoText(*colony.ended)));
    needLife(c, colony, day);
    moveEnd(c, colony, day, how, change);
}

namespace {

/// Refuses where another came, since `day`, to where the colony would stand again, or nearer than kStandApartMm.
void needPlaceStill(const EditContext& c, const Colony& colony, const Placement& place, Day day) {
    const auto stand = c.stand(place.stand);
    if (!stand) return;
    for (const Stand& near : c.standsOf(stand->yard)) {
        if (squaredDistance(near.at, stand->at) >= qint64(kStandApartMm) * kStandApartMm) continue;
        for (const Placement& p : c.placementsAt(near.id)) {
            if (p.colony == colony.id || p.since < day) continue;
            refuse(Edits::tr("%1 stands on stand %2 from %3 on; %4 cannot stand there again.")
                       .arg(shownName(c, needColony(c, p.colony), p.since), near.name, isoText(p.since),
                            shownName(c, colony, day)));
        }
    }
}

} // namespace

void liveAgain(const EditContext& c, const Colony& colony, ChangeSet& change) {
    const auto places = c.placementsOf(colony.id);
    if (!places.empty()) {
        needPlaceStill(c, colony, places.back(), *colony.ended);
        if (const auto stand = c.stand(places.back().stand)) standAgain(*stand, change);
    }
    moveEnd(c, colony, std::nullopt, std::nullopt, change);
}

ChangeSet endColony(const EditContext& c, ColonyId id, Day day, EndKind how) {
    needOwnEnd(how);
    const Colony colony = needColony(c, id);
    ChangeSet change;
    endOn(c, colony, day, how, change);
    judge(c, change.rows);
    change.text = endText(shownName(c, colony, day), day, how);
    addKitOfEnd(c, colony, day, how, change);
    return change;
}

ChangeSet changeEnd(const EditContext& c, ColonyId id, Day day, EndKind how) {
    needOwnEnd(how);
    const Colony old = needEnded(c, id);
    ChangeSet change;
    moveEnd(c, old, day, how, change);
    if (change.empty()) return {};
    judge(c, change.rows);
    change.text = Edits::tr("Put right: %1 (was %2, %3)")
                      .arg(endText(shownName(c, old, *old.ended), day, how), word(*old.end), isoText(*old.ended));
    if (how == old.end) return change;
    takeKitBack(c, old, change);
    addKitOfEnd(c, old, day, how, change);
    return change;
}

ChangeSet takeBackEnd(const EditContext& c, ColonyId id) {
    const Colony old = needEnded(c, id);
    ChangeSet change;
    liveAgain(c, old, change);
    judge(c, change.rows);
    change.text =
        Edits::tr("Took back the end of %1 on %2: it lives").arg(shownName(c, old, *old.ended), isoText(*old.ended));
    takeKitBack(c, old, change);
    return change;
}

} // namespace core::edit
