#include "core/edit/after_union.h"
#include "core/edit/bulk_change.h"
#include "core/edit/edits.h"
#include "core/edit/hive_row.h"
#include "core/edit/put_right.h"
#include "tests/reliability/soak/drafts.h"
#include "tests/reliability/soak/hand.h"

// Colonies come, are united, divided, end, and are put right or taken back.

namespace tests::soak {

NewColony freshColony(Hand& h, const EditContext& c) {
    NewColony n;
    n.colony.label = h.label();
    n.colony.since = h.today - h.upTo(6);
    n.colony.box = BoxKindId{1 + h.upTo(3)};
    n.colony.note = h.note();
    n.stand.yard = h.yard();
    n.stand.at = h.place(c, n.stand.yard);
    const auto stands = c.standsOf(n.stand.yard);
    const auto there = std::ranges::find(stands, n.stand.at, &Stand::at);
    if (there != stands.end()) n.stand = *there;
    if (h.oneIn(2)) n.headingDeg = h.upTo(359);
    return n;
}

namespace {

Lineage unionOf(Hand& h) {
    h.needMany();
    const ColonyId moved = h.living();
    const auto how = h.oneIn(3) ? LineageHow::ShakenOut : LineageHow::United;
    return {{}, h.today - h.upTo(2), how, moved, h.otherLiving(moved), h.who(), h.note()};
}

Divide divideOf(Hand& h, const EditContext& c) {
    h.needRoom();
    return {h.living(), freshColony(h, c), h.who(), h.note()};
}

HiveRow rowOf(Hand& h) {
    h.needRoom();
    HiveRow r;
    r.yard = h.yard();
    r.count = 1 + h.upTo(2);
    r.firstLabel = QStringLiteral("R%1").arg(h.upTo(9999));
    r.start = h.ground();
    r.spacingMm = 700;
    r.box = BoxKindId{1 + h.upTo(3)};
    r.since = h.today;
    return r;
}

EndKind endKind(Hand& h) { return h.oneOf({EndKind::Dead, EndKind::Dead, EndKind::Sold, EndKind::Destroyed}); }

Loss lossOf(Hand& h) {
    h.needMany();
    Loss loss;
    loss.colony = h.living();
    loss.day = h.today;
    loss.cause = h.note();
    if (h.oneIn(2)) loss.brood = BroodFound::Healthy;
    if (loss.brood == BroodFound::Healthy && h.oneIn(2)) loss.framesLooked = 3;
    loss.by = h.who();
    return loss;
}

ChangeSet failure(Hand& h, const EditContext& c) {
    Failure f;
    f.how = static_cast<UnionFailure>(h.upTo(3));
    f.queen = static_cast<QueenSeen>(h.upTo(6));
    f.loss = lossOf(h);
    f.loss.brood = BroodFound::NotLooked;
    f.loss.framesLooked.reset();
    return recordFailure(c, f);
}

ChangeSet colonyNow(Hand& h, const EditContext& c) {
    Colony now = h.any<Colony>();
    if (h.oneIn(3)) now.since = now.since - h.upTo(2);
    if (h.oneIn(3)) now.label = h.label();
    if (h.oneIn(4)) now.box = h.any<BoxKind>().id;
    if (h.oneIn(2)) now.queenBorn = 2020 + h.upTo(6);
    now.note = h.note();
    return changeColony(c, now);
}

ChangeSet coloniesNow(Hand& h, const EditContext& c) {
    const ColonyId one = h.living();
    ColonyPut put;
    if (h.oneIn(2)) put.box = BoxKindId{1 + h.upTo(3)};
    put.queenBorn = std::optional(2020 + h.upTo(6));
    if (h.oneIn(2)) put.note = PutNote{h.note(), h.oneIn(5)};
    return changeColonies(c, {one, h.otherLiving(one)}, put);
}

ChangeSet beginningNow(Hand& h, const EditContext& c) {
    Colony now = *c.colony(h.anyColony());
    if (now.note.size() < 200) now.note += h.note();
    const auto first = c.placementsOf(now.id).at(0);
    PlaceChange place{*c.stand(first.stand), h.upTo(359), now.since};
    if (h.oneIn(3)) place.stand = {{}, place.stand.yard, {}, h.ground(), false};
    return changeBeginning(c, now, place);
}

ChangeSet endNow(Hand& h, const EditContext& c) {
    const Colony of = h.such<Colony>([](const Colony& x) { return x.ended && x.end != EndKind::United; });
    return changeEnd(c, of.id, h.near(*of.ended), h.oneOf({EndKind::Dead, EndKind::Sold}));
}

const Kind kKinds[] = {
    {"addColony", 6,
     [](Hand& h, const EditContext& c) {
         h.needRoom();
         return addColony(c, freshColony(h, c));
     }},
    {"addHiveRow", 1, [](Hand& h, const EditContext& c) { return addHiveRow(c, rowOf(h)); }},
    {"recordDivide", 4, [](Hand& h, const EditContext& c) { return recordDivide(c, divideOf(h, c)); }},
    {"recordUnion", 4, [](Hand& h, const EditContext& c) { return recordUnion(c, unionOf(h)); }},
    {"endColony", 3,
     [](Hand& h, const EditContext& c) {
         h.needMany();
         return endColony(c, h.living(), h.today, endKind(h));
     }},
    {"recordLoss", 2, [](Hand& h, const EditContext& c) { return recordLoss(c, lossOf(h)); }},
    {"recordFailure", 1, failure},
    {"changeColony", 12, colonyNow},
    {"changeColonies", 4, coloniesNow},
    {"changeBeginning", 4, beginningNow},
    {"changeEnd", 4, endNow},
    {"changeLineage", 4,
     [](Hand& h, const EditContext& c) {
         Lineage now = h.any<Lineage>();
         if (h.oneIn(4)) now.day = h.near(now.day);
         now.note = h.note();
         return changeLineage(c, now);
     }},
    {"takeBackLineage", 8, [](Hand& h, const EditContext& c) { return takeBackLineage(c, h.old<Lineage>().id); }},
    {"takeBackEnd", 24,
     [](Hand& h, const EditContext& c) { return takeBackEnd(c, h.oneIn(12) ? h.ended() : h.bare(false)); }},
    {"takeBackColony", 24,
     [](Hand& h, const EditContext& c) { return takeBackColony(c, h.oneIn(12) ? h.living() : h.bare(true)); }},
};

} // namespace

std::span<const Kind> colonyKinds() { return kKinds; }

} // namespace tests::soak
