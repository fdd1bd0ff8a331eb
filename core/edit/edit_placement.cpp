#include "core/edit/after_context.h"
#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/judge.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr Day kNever{INT32_MAX};

/// A place of a colony, with the one before and the one after it.
struct Between {
    Placement place;
    std::optional<Placement> before;
    std::optional<Placement> next;
};

Between betweenOf(const EditContext& c, PlacementId id) {
    const auto found = c.find<Placement>(id.value);
    if (!found) refuse(Edits::tr("That carry is no longer in the book."));
    Between b{*found, {}, {}};
    const auto all = c.placementsOf(found->colony);
    const auto at = std::find(all.begin(), all.end(), *found);
    if (at == all.end()) refuse(Edits::tr("That carry is no longer in the book."));
    if (at != all.begin()) b.before = *std::prev(at);
    if (std::next(at) != all.end()) b.next = *std::next(at);
    return b;
}

/// The stand asked for, which the change makes, or brings back where the hive stands there now.
Stand standAsked(const EditContext& c, const Stand& asked, const Placement& was, ChangeSet& change) {
    const auto again = [&](const Stand& old) {
        return old.id == was.stand || was.until ? old : standAgain(old, change);
    };
    if (asked.id.value > 0) {
        const auto old = c.stand(asked.id);
        if (!old) refuse(Edits::tr("That stand is no longer in the book."));
        return again(*old);
    }
    needYard(c, asked.yard);
    std::optional<Stand> there;
    if (asked.name.trimmed().isEmpty())
        for (const Stand& stand : c.standsOf(asked.yard))
            if (stand.at == asked.at && (!there || (there->removed && !stand.removed))) there = stand;
    if (there) return again(*there);
    ChangeSet made = addStand(c, asked.yard, asked.name, asked.at);
    change.rows = std::move(made.rows);
    return fromRow<Stand>(change.rows.back().id, *change.rows.back().after);
}

/// Refuses where another's hive stands, while this one does, nearer to the stand than kStandApartMm.
void needBareWhile(const EditContext& c, const Stand& on, const Placement& place) {
    const Day until = place.until.value_or(kNever);
    for (const Stand& stand : c.standsOf(on.yard)) {
        if (squaredDistance(stand.at, on.at) >= qint64(kStandApartMm) * kStandApartMm) continue;
        for (const Placement& p : c.placementsAt(stand.id)) {
            if (p.colony == place.colony || p.since >= until || p.until.value_or(kNever) <= place.since) continue;
            refuse(Edits::tr("%1 stands on stand %2 from %3 on; hives stand at least 0.3 m apart.")
                       .arg(shownName(c, needColony(c, p.colony), p.since), stand.name, isoText(p.since)));
        }
    }
}

void checkDays(const EditContext& c, const Between& b, const Colony& colony, Day since) {
    if (since == b.place.since) return;
    if (b.place.first)
        refuse(Edits::tr("%1 began on %2, and stands there since; put right the day it began.")
                   .arg(shownName(c, colony, colony.since), isoText(colony.since)));
    needLife(c, colony, since);
    const QString name = shownName(c, colony, b.place.since);
    if (b.before && since < b.before->since)
        refuse(Edits::tr("%1 was carried on %2 before; this carry cannot be earlier.")
                   .arg(name, isoText(b.before->since)));
    if (b.next && since > b.next->since)
        refuse(Edits::tr("%1 was carried again on %2; this carry cannot be later.").arg(name, isoText(b.next->since)));
    const auto carriedThen = [&](const std::optional<Placement>& p) { return p && !p->first && p->since == since; };
    if (carriedThen(b.before) || carriedThen(b.next))
        refuse(Edits::tr("%1 was carried on %2 already; of a day one carry is kept. Take that one back first.")
                   .arg(name, isoText(since)));
}

/// A carry to where it stands is none.
void checkNeighbours(const EditContext& c, const Between& b, const Colony& colony, const Stand& stand) {
    const QString name = shownName(c, colony, b.place.since);
    if (b.before && b.before->stand == stand.id)
        refuse(Edits::tr("%1 stood on stand %2 before; take the carry back instead.").arg(name, stand.name));
    if (b.next && b.next->stand == stand.id)
        refuse(Edits::tr("%1 was carried to stand %2 on %3; take that carry back first.")
                   .arg(name, stand.name, isoText(b.next->since)));
}

QString placeText(const EditContext& c, const Colony& colony, const Placement& was, Day since) {
    const QString name = shownName(c, colony, was.since);
    if (was.first) return Edits::tr("Put right the first place of %1").arg(name);
    if (since == was.since) return Edits::tr("Put right the carry of %1 on %2").arg(name, isoText(since));
    return Edits::tr("Put right that %1 was carried on %2 (was %3)").arg(name, isoText(since), isoText(was.since));
}

/// Each row once: as it was at first, as it is at last.
std::vector<RowChange> joined(std::vector<RowChange> rows, const std::vector<RowChange>& later) {
    for (const RowChange& row : later) {
        const auto same =
            std::ranges::find_if(rows, [&](const RowChange& r) { return r.table == row.table && r.id == row.id; });
        if (same == rows.end())
            rows.push_back(row);
        else
            same->after = row.after;
    }
    return rows;
}

} // namespace

ChangeSet changePlacement(const EditContext& c, PlacementId id, const PlaceChange& asked) {
    constexpr int kLastHeading = 359;
    const Between b = betweenOf(c, id);
    const Colony colony = needColony(c, b.place.colony);
    checkRange(asked.headingDeg, 0, kLastHeading, Edits::tr("Heading"));
    checkDays(c, b, colony, asked.since);
    ChangeSet change;
    const Stand stand = standAsked(c, asked.stand, b.place, change);
    Placement now = b.place;
    now.stand = stand.id;
    now.headingDeg = asked.headingDeg;
    now.since = asked.since;
    if (now == b.place) return {};
    const bool elsewhere = now.stand != b.place.stand;
    if (elsewhere) checkNeighbours(c, b, colony, stand);
    change.rows.push_back(changed(b.place, now));
    if (now.since != b.place.since && b.before) {
        Placement left = *b.before;
        left.until = now.since;
        change.rows.push_back(changed(*b.before, left));
    }
    if (elsewhere) dropStandOf(c, b.place, change);
    judge(c, change.rows);
    const AfterContext after(c, change.rows);
    if (elsewhere || now.since != b.place.since) needBareWhile(after, stand, now);
    if (now.since != b.place.since && b.before) {
        const Placement left = after.find<Placement>(b.before->id.value).value();
        if (const auto old = after.stand(left.stand)) needBareWhile(after, *old, left);
    }
    change.text = placeText(c, colony, b.place, now.since);
    return change;
}

ChangeSet changeBeginning(const EditContext& c, const Colony& now, const PlaceChange& place) {
    ChangeSet change = changeColony(c, now);
    const AfterContext after(c, change.rows);
    for (const Placement& p : after.placementsOf(now.id)) {
        if (!p.first) continue;
        ChangeSet moved = changePlacement(after, p.id, {place.stand, place.headingDeg, p.since});
        if (change.empty()) return moved;
        change.rows = joined(std::move(change.rows), moved.rows);
        break;
    }
    return change;
}

} // namespace core::edit
