#include "core/edit/survey.h"

#include "core/edit/after_context.h"
#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/row_change.h"
#include "core/model/fixed_shape.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace core::edit {

namespace {

QString drawingText(const Yard& yard, const QString& what) {
    return Edits::tr("Corrected the drawing of %1: %2").arg(yard.name, what);
}

QString metres(MmPoint from, MmPoint to) { return decimalText(distanceTenths(from, to), 1); }

void needNear(MmPoint at, const QString& what) {
    if (std::max(std::abs(at.x), std::abs(at.y)) > kFarthestMm)
        refuse(Edits::tr("%1: expected at most 10000 m from the yard's origin.").arg(what));
}

Stand needStandOf(const EditContext& c, const Yard& yard, StandId id) {
    const auto stand = c.stand(id);
    if (!stand) refuse(Edits::tr("That stand is no longer in the book."));
    if (stand->yard != yard.id) refuse(Edits::tr("Stand %1 is not in %2.").arg(stand->name, yard.name));
    if (stand->removed) refuse(Edits::tr("Stand %1 of %2 was taken off the plan.").arg(stand->name, yard.name));
    return *stand;
}

Placement needStanding(const EditContext& c, const Yard& yard, const Colony& colony) {
    const auto open = c.openPlacement(colony.id);
    const auto stand = open ? c.stand(open->stand) : std::nullopt;
    if (!stand || stand->yard != yard.id)
        refuse(Edits::tr("%1 does not stand in %2.").arg(shownName(c, colony, c.today()), yard.name));
    return *open;
}

} // namespace

void needApart(const EditContext& c, YardId yard, const std::vector<Stand>& was) {
    constexpr qint64 kNear = qint64(kStandApartMm) * kStandApartMm;
    const auto before = [&](const Stand& stand) {
        const auto old = std::ranges::find(was, stand.id, &Stand::id);
        return old == was.end() ? stand.at : old->at;
    };
    const auto all = c.standsOf(yard);
    for (const Stand& moved : was) {
        const auto now = std::ranges::find(all, moved.id, &Stand::id);
        if (now == all.end() || now->removed) continue;
        for (const Stand& other : all) {
            if (other.removed || other.id == moved.id) continue;
            const qint64 apart = squaredDistance(now->at, other.at);
            if (apart >= kNear || apart >= squaredDistance(before(*now), before(other))) continue;
            refuse(Edits::tr("Stand %1 would be %2 m from stand %3; stands are at least 0.3 m apart.")
                       .arg(now->name, metres(now->at, other.at), other.name));
        }
    }
}

ChangeSet moveStands(const EditContext& c, YardId id, const std::vector<StandMove>& moves) {
    const Yard yard = needYard(c, id);
    ChangeSet change;
    std::vector<Stand> was;
    std::set<StandId> named;
    for (const StandMove& move : moves) {
        const Stand old = needStandOf(c, yard, move.stand);
        if (!named.insert(move.stand).second) refuse(Edits::tr("Stand %1 is named twice.").arg(old.name));
        needNear(move.to, Edits::tr("Stand %1").arg(old.name));
        if (old.at == move.to) continue;
        Stand now = old;
        now.at = move.to;
        was.push_back(old);
        change.rows.push_back(changed(old, now));
    }
    if (was.empty()) return {};
    needApart(AfterContext(c, change.rows), id, was);
    const auto only = fromRow<Stand>(change.rows.front().id, *change.rows.front().after);
    change.text = drawingText(
        yard, was.size() == 1 ? Edits::tr("moved stand %1 by %2 m").arg(only.name, metres(was.front().at, only.at))
                              : Edits::tr("moved %1 stands").arg(was.size()));
    return change;
}

ChangeSet turnHives(const EditContext& c, YardId id, const std::vector<HiveTurn>& turns) {
    constexpr int kLastHeading = 359;
    const Yard yard = needYard(c, id);
    ChangeSet change;
    std::set<ColonyId> named;
    QString only;
    for (const HiveTurn& turn : turns) {
        const Colony colony = needColony(c, turn.colony);
        const Placement open = needStanding(c, yard, colony);
        const QString label = shownName(c, colony, c.today());
        if (!named.insert(turn.colony).second) refuse(Edits::tr("%1 is named twice.").arg(label));
        checkRange(turn.headingDeg, 0, kLastHeading, Edits::tr("Heading"));
        if (open.headingDeg == turn.headingDeg) continue;
        Placement now = open;
        now.headingDeg = turn.headingDeg;
        change.rows.push_back(changed(open, now));
        only = Edits::tr("%1 faces %2°").arg(label).arg(turn.headingDeg);
    }
    if (change.rows.empty()) return {};
    change.text =
        drawingText(yard, change.rows.size() == 1 ? only : Edits::tr("turned %1 hives").arg(change.rows.size()));
    return change;
}

ChangeSet putGate(const EditContext& c, YardId id, MmPoint at) {
    const Yard old = needYard(c, id);
    needNear(at, Edits::tr("Gate"));
    Yard now = old;
    now.gateX = Millimetres{at.x};
    now.gateY = Millimetres{at.y};
    if (now == old) return {};
    const bool known = old.gateX || old.gateY;
    return {drawingText(old, known ? Edits::tr("moved the gate by %1 m").arg(metres(old.gate(), at))
                                   : Edits::tr("put the gate")),
            {changed(old, now)},
            {},
            {},
            {}};
}

} // namespace core::edit
