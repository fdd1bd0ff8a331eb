#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "core/edit/survey.h"
#include "core/model/fixed_shape.h"
#include "tests/reliability/soak/hand.h"

// Yards, stands, carries and the drawing.

namespace tests::soak {

namespace {

Stand standOf(const EditContext& c, ColonyId colony) {
    const auto open = c.openPlacement(colony);
    if (!open) throw Nothing();
    return *c.stand(open->stand);
}

Yard yardDraft(Hand& h) {
    Yard y;
    y.name = QStringLiteral("Yard %1").arg(h.upTo(40));
    if (h.oneIn(2)) y.latitudeDeg = 40 + h.upTo(100) / 10.0;
    if (y.latitudeDeg) y.longitudeDeg = h.upTo(100) / 10.0;
    y.note = h.note();
    return y;
}

ChangeSet yardNow(Hand& h, const EditContext& c) {
    const Yard old = h.any<Yard>();
    Yard now = yardDraft(h);
    now.id = old.id;
    if (h.oneIn(2)) now.name = old.name;
    now.gateX = old.gateX;
    now.gateY = old.gateY;
    now.closed = !old.closed && h.oneIn(6) && h.book().rows(Table::Yard).size() > 2;
    return changeYard(c, now);
}

ChangeSet carryOne(Hand& h, const EditContext& c) {
    h.needFewCarries();
    const ColonyId id = h.living();
    const Stand from = standOf(c, id);
    return carryHive(c, id, h.place(c, from.yard), h.today - h.upTo(2));
}

ChangeSet carryAway(Hand& h, const EditContext& c) {
    h.needFewCarries();
    const YardId yard = h.yard();
    std::optional<int> heading;
    if (h.oneIn(2)) heading = h.upTo(359);
    return carryTo(c, {h.living(), yard, h.place(c, yard), heading, h.today});
}

ChangeSet carrySome(Hand& h, const EditContext& c) {
    h.needFewCarries();
    const ColonyId one = h.living();
    const ColonyId other = h.otherLiving(one);
    const Stand a = standOf(c, one), b = standOf(c, other);
    // The one to the other's place, the other a step aside.
    return carryHives(c, {{one, b.yard, b.at, {}, h.today}, {other, b.yard, b.at + MmPoint{350, 0}, {}, h.today}});
}

ChangeSet swapTwo(Hand& h, const EditContext& c) {
    h.needFewCarries();
    const ColonyId one = h.living();
    const Stand from = standOf(c, one);
    for (int i = 0; i < 6; ++i)
        if (const ColonyId other = h.living(); other != one && standOf(c, other).yard == from.yard)
            return swapHives(c, one, other, h.today);
    throw Nothing();
}

ChangeSet placementNow(Hand& h, const EditContext& c) {
    const Placement was = h.any<Placement>();
    PlaceChange now{*c.stand(was.stand), h.upTo(359), was.since};
    if (!was.first && h.oneIn(3)) now.since = h.near(was.since);
    if (h.oneIn(4)) now.stand = {{}, now.stand.yard, {}, h.ground(), false};
    return changePlacement(c, was.id, now);
}

ChangeSet carryBack(Hand& h, const EditContext& c) {
    if (!h.oneIn(3)) return takeBackCarry(c, h.old<Placement>().id);
    return takeBackCarry(c, h.such<Placement>([](const Placement& p) { return !p.first && !p.until; }).id);
}

ChangeSet standBack(Hand& h, const EditContext& c) {
    if (h.oneIn(6)) return takeBackStand(c, h.any<Stand>().id);
    std::set<StandId> used;
    for (const auto& [id, row] : h.book().rows(Table::Placement)) used.insert(fromRow<Placement>(id, row).stand);
    return takeBackStand(c, h.such<Stand>([&](const Stand& s) { return !used.contains(s.id); }).id);
}

ChangeSet stands(Hand& h, const EditContext& c) {
    const YardId yard = h.yard();
    std::vector<StandMove> moves;
    for (const Stand& stand : c.standsOf(yard))
        if (!stand.removed && h.oneIn(4)) moves.push_back({stand.id, stand.at + MmPoint{h.upTo(80), h.upTo(80)}});
    return moveStands(c, yard, moves);
}

FixedThing thing(Hand& h) {
    FixedThing t;
    t.yard = h.yard();
    t.kind = static_cast<FixedKind>(h.upTo(5));
    if (h.oneIn(2)) t.name = QStringLiteral("thing %1").arg(h.upTo(30));
    for (int i = 0; i < leastPoints(t.kind); ++i) t.points.push_back(h.ground());
    if (t.kind == FixedKind::Shed) t.points = rectangleOf(t.points[0], t.points[1], t.points[2]);
    if (t.kind == FixedKind::Tree) t.radius = Millimetres{500 + h.upTo(2000)};
    return t;
}

ChangeSet thingNow(Hand& h, const EditContext& c) {
    const FixedThing old = h.any<FixedThing>();
    FixedThing now = thing(h);
    now.id = old.id;
    now.yard = old.yard;
    return changeFixedThing(c, now);
}

const Kind kKinds[] = {
    {"newYard", 4,
     [](Hand& h, const EditContext& c) {
         if (h.book().rows(Table::Yard).size() > h.size().yards) throw Nothing();
         return newYard(c, yardDraft(h));
     }},
    {"changeYard", 5, yardNow},
    {"takeBackYard", 2,
     [](Hand& h, const EditContext& c) {
         return takeBackYard(c, h.such<Yard>([&](const Yard& y) { return c.standsOf(y.id).empty(); }).id);
     }},
    {"addStand", 4,
     [](Hand& h, const EditContext& c) {
         h.needFew(Table::Stand);
         return addStand(c, h.yard(), {}, h.ground());
     }},
    {"takeBackStand", 16, standBack},
    {"carryHive", 10, carryOne},
    {"carryTo", 4, carryAway},
    {"carryHives", 4, carrySome},
    {"swapHives", 5, swapTwo},
    {"changePlacement", 8, placementNow},
    {"takeBackCarry", 24, carryBack},
    {"moveStands", 4, stands},
    {"turnHives", 4,
     [](Hand& h, const EditContext& c) {
         const ColonyId id = h.living();
         return turnHives(c, standOf(c, id).yard, {{id, h.upTo(359)}});
     }},
    {"putGate", 2, [](Hand& h, const EditContext& c) { return putGate(c, h.yard(), h.ground()); }},
    {"addFixedThing", 3,
     [](Hand& h, const EditContext& c) {
         if (h.book().rows(Table::FixedThing).size() > 20) throw Nothing();
         return addFixedThing(c, thing(h));
     }},
    {"changeFixedThing", 3, thingNow},
    {"takeBackFixedThing", 2,
     [](Hand& h, const EditContext& c) { return takeBackFixedThing(c, h.any<FixedThing>().id); }},
};

} // namespace

std::span<const Kind> placeKinds() { return kKinds; }

} // namespace tests::soak
