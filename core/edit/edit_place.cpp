#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"

#include <cmath>

namespace core::edit {

namespace {

constexpr qint32 kFarthestMm = 10'000'000;

void checkPoint(MmPoint at, const QString& field) {
    if (std::abs(at.x) > kFarthestMm || std::abs(at.y) > kFarthestMm)
        refuse(Edits::tr("%1: expected at most 10000 m from the yard's origin.").arg(field));
}

void checkDegrees(std::optional<double> value, double most, const QString& field) {
    if (value && !(std::abs(*value) <= most))
        refuse(Edits::tr("%1: %2 is not from −%3 to %3 degrees.").arg(field).arg(*value).arg(most));
}

/// What is typed of a yard, new or not; its id is set.
Yard checkedYard(const EditContext& c, const Yard& typed) {
    Yard yard = typed;
    yard.name = checkedName(typed.name, Edits::tr("Yard"));
    yard.note = typed.note.trimmed();
    if (const auto other = c.yardNamed(yard.name); other && other->id != yard.id)
        refuse(Edits::tr("There is a yard %1 already.").arg(yard.name));
    checkDegrees(yard.latitudeDeg, 90, Edits::tr("Latitude"));
    checkDegrees(yard.longitudeDeg, 180, Edits::tr("Longitude"));
    checkPoint(yard.gate(), Edits::tr("Gate"));
    return yard;
}

/// Hives in a yard that is closed would be seen by nobody.
void needEmpty(const EditContext& c, const Yard& yard) {
    for (const Stand& stand : c.standsOf(yard.id))
        for (const Placement& p : c.placementsAt(stand.id))
            if (!p.until)
                refuse(Edits::tr("%1 stands in %2, on stand %3; only a yard without hives is closed.")
                           .arg(needColony(c, p.colony).label, yard.name, stand.name));
}

} // namespace

ChangeSet addStand(const EditContext& c, YardId yard, const QString& name, MmPoint at) {
    const Yard in = needYard(c, yard);
    const auto stands = c.standsOf(yard);
    Stand stand{StandId{c.nextId(Table::Stand)}, yard, {}, at, false};
    stand.name = name.trimmed().isEmpty() ? nextStandName(stands) : checkedName(name, Edits::tr("Stand"));
    checkPoint(at, Edits::tr("Position"));
    if (c.standNamed(yard, stand.name)) refuse(Edits::tr("%1 has a stand %2 already.").arg(in.name, stand.name));
    for (const Stand& other : stands)
        if (other.at == at && !other.removed) refuse(Edits::tr("Stand %1 is there already.").arg(other.name));
    return {Edits::tr("Added stand %1 in %2").arg(stand.name, in.name), {added(stand)}, {}, {}, {}};
}

ChangeSet newYard(const EditContext& c, const Yard& typed) {
    Yard fresh = typed;
    fresh.id = YardId{c.nextId(Table::Yard)};
    const Yard yard = checkedYard(c, fresh);
    return {Edits::tr("Added yard %1").arg(yard.name), {added(yard)}, {}, {}, {}};
}

ChangeSet changeYard(const EditContext& c, const Yard& typed) {
    const Yard old = needYard(c, typed.id);
    const Yard now = checkedYard(c, typed);
    if (now == old) return {};
    if (now.closed && !old.closed) needEmpty(c, old);
    const QString text = old.name != now.name ? Edits::tr("Renamed yard %1 to %2").arg(old.name, now.name)
                                              : Edits::tr("Changed yard %1").arg(old.name);
    return {text, {changed(old, now)}, {}, {}, {}};
}

} // namespace core::edit
