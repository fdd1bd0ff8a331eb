#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/row_change.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::edit {

namespace {

/// The eight winds, from north clockwise.
QString windText(MmPoint step) {
    const double turns = std::atan2(double(step.x), double(step.y)) / (2 * std::numbers::pi);
    switch ((static_cast<int>(std::lround(turns * 8)) + 8) % 8) {
    case 0:
        return Edits::tr("north");
    case 1:
        return Edits::tr("north-east");
    case 2:
        return Edits::tr("east");
    case 3:
        return Edits::tr("south-east");
    case 4:
        return Edits::tr("south");
    case 5:
        return Edits::tr("south-west");
    case 6:
        return Edits::tr("west");
    default:
        return Edits::tr("north-west");
    }
}

/// Where the hive stands now, and how it came there.
struct Standing {
    Placement open; ///< its present, open placement
    Stand stand;
    std::optional<Placement> today;  ///< `open`, when it is a carry of the day asked for
    std::optional<Placement> before; ///< of `today`: where it stood before that carry
};

Standing standingOf(const EditContext& c, const Colony& colony, Day day) {
    Standing s;
    const auto open = c.openPlacement(colony.id);
    if (!open) refuse(Edits::tr("%1 stands on no stand.").arg(colony.label));
    s.open = *open;
    const auto stand = c.stand(open->stand);
    if (!stand) refuse(Edits::tr("%1 stands on no stand.").arg(colony.label));
    s.stand = *stand;
    if (open->since != day || open->first) return s;
    s.today = open;
    const auto all = c.placementsOf(colony.id);
    if (all.size() > 1) s.before = all[all.size() - 2];
    return s;
}

const Stand* standAt(const std::vector<Stand>& stands, MmPoint at) {
    // A stand in use before one that was taken away.
    const Stand* found = nullptr;
    for (const Stand& stand : stands)
        if (stand.at == at && (!found || (found->removed && !stand.removed))) found = &stand;
    return found;
}

/// The stand at that point, which the change makes or brings back where there is none.
Stand standFor(const EditContext& c, YardId yard, const std::vector<Stand>& stands, MmPoint at, ChangeSet& change) {
    if (const Stand* old = standAt(stands, at)) return standAgain(*old, change);
    const Stand fresh{StandId{c.nextId(Table::Stand)}, yard, nextStandName(stands), at, false};
    change.rows.push_back(added(fresh));
    return fresh;
}

/// The carry of that day is gone; the placement before it is open again.
void takeBack(const Standing& s, ChangeSet& change) {
    change.rows.push_back(deleted(*s.today));
    Placement open = *s.before;
    open.until.reset();
    change.rows.push_back(changed(*s.before, open));
}

/// First carry of the day: the open placement ends, a new one begins.
void moveOn(const EditContext& c, const Standing& s, StandId to, const CarryTo& carry, ChangeSet& change) {
    Placement left = s.open;
    left.until = carry.day;
    change.rows.push_back(changed(s.open, left));
    change.rows.push_back(added(Placement{PlacementId{c.nextId(Table::Placement)}, s.open.colony, to, carry.headingDeg,
                                          carry.day, std::nullopt, false}));
}

bool comesBack(const EditContext& c, const Standing& s, const CarryTo& carry) {
    if (!s.today || !s.before) return false;
    const auto home = c.stand(s.before->stand);
    return home && home->yard == carry.yard && home->at == carry.to;
}

void checkDay(const EditContext& c, const Colony& colony, const Placement& open, Day day) {
    needLife(c, colony, day);
    if (colony.ended)
        refuse(Edits::tr("%1 ended on %2; its hive is no longer carried.")
                   .arg(shownName(c, colony, day), isoText(*colony.ended)));
    if (day < open.since)
        refuse(Edits::tr("%1 was carried on %2; an earlier carry cannot be added after it.")
                   .arg(shownName(c, colony, day), isoText(open.since)));
}

} // namespace

ChangeSet carryTo(const EditContext& c, const CarryTo& carry) {
    constexpr int kFarthestMm = 10'000'000;
    constexpr int kLastHeading = 359;
    const Colony colony = needColony(c, carry.colony);
    if (colony.ended) checkDay(c, colony, {}, carry.day);
    const Standing s = standingOf(c, colony, carry.day);
    checkDay(c, colony, s.open, carry.day);
    const Yard yard = needYard(c, carry.yard);
    const bool sameYard = s.stand.yard == carry.yard;
    if (sameYard && s.stand.at == carry.to) return {};
    if (std::max(std::abs(carry.to.x), std::abs(carry.to.y)) > kFarthestMm)
        refuse(Edits::tr("A stand lies at most 10000 m from the yard's origin."));
    checkRange(carry.headingDeg, 0, kLastHeading, Edits::tr("Heading"));
    const auto stands = c.standsOf(carry.yard);
    needBareGround(c, stands, carry.to, carry.colony, carry.day);

    const LengthUnit unit = c.settings().showLength;
    ChangeSet change;
    const QString name = shownName(c, colony, carry.day);
    change.text = sameYard ? Edits::tr("Carried %1 %2 %3 %4")
                                 .arg(name, decimalText(distanceTenths(s.stand.at, carry.to, unit), 1), unitSign(unit),
                                      windText(carry.to - s.stand.at))
                           : Edits::tr("Carried %1 to %2").arg(name, yard.name);
    if (comesBack(c, s, carry)) {
        takeBack(s, change);
    } else {
        const Stand there = standFor(c, carry.yard, stands, carry.to, change);
        if (s.today) {
            Placement moved = *s.today;
            moved.stand = there.id;
            if (carry.headingDeg) moved.headingDeg = carry.headingDeg;
            change.rows.push_back(changed(*s.today, moved));
        } else {
            moveOn(c, s, there.id, carry, change);
        }
    }
    if (s.today) dropStandOf(c, *s.today, change);
    return change;
}

ChangeSet carryHive(const EditContext& c, ColonyId id, MmPoint to, Day day) {
    const auto open = c.openPlacement(id);
    const auto stand = open ? c.stand(open->stand) : std::nullopt;
    return carryTo(c, {id, stand ? stand->yard : YardId{}, to, std::nullopt, day});
}

} // namespace core::edit
