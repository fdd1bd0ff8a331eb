#include "core/edit/after_union.h"
#include "core/edit/bulk_change.h"
#include "core/edit/edits.h"
#include "core/edit/feedings.h"
#include "core/edit/mite_falls.h"
#include "core/edit/put_right.h"
#include "tests/reliability/soak/drafts.h"

// Visits, transfers, feed and mites on boards.

namespace tests::soak {

void see(Hand& h, const EditContext& c, Visit& v) {
    v.beesTop = Quarters{h.upTo(36)};
    if (h.oneIn(3)) v.stores = Quarters{h.upTo(20)};
    v.broodFrames = v.broodChecked = 3 + h.upTo(4);
    if (h.oneIn(2)) v.queen = static_cast<QueenSeen>(h.upTo(1));
    v.signs = {};
    if (h.oneIn(6)) v.signs.add(Sign::Chalkbrood);
    if (h.oneIn(8)) v.signs.add(Sign::DeformedWings);
    if (h.sick && h.oneIn(30)) v.signs.add(h.oneOf({Sign::Afb, Sign::Efb, Sign::BroodDoubt, Sign::BroodDoubt}));
    if (h.oneIn(5)) v.gross = Decagrams{2000 + h.upTo(3000)};
    if (h.oneIn(6)) v.mites = h.upTo(20);
    if (v.mites) v.miteSample = 300;
    if (c.boxesAt(v.colony, v.day) == 2) v.upperBeesTop = Quarters{h.upTo(36)};
    v.by = h.who();
    v.note = h.note();
}

namespace {

Visit visitOf(Hand& h, const EditContext& c) {
    h.needFew(Table::Visit);
    Visit v;
    v.colony = h.living();
    v.day = h.dayOf(v.colony);
    see(h, c, v);
    if (h.oneIn(12)) v.boxes = 1 + h.upTo(1);
    return v;
}

ChangeSet visitNow(Hand& h, const EditContext& c) {
    Visit now = *c.visit(h.any<Visit>().id);
    if (h.oneIn(4)) now.day = h.near(now.day);
    const Signs was = now.signs;
    see(h, c, now);
    if (was.broodTrouble()) now.signs = was;
    return changeVisit(c, now);
}

std::vector<VisitId> someVisits(Hand& h) {
    std::set<VisitId> some;
    for (int i = 0; i < 3; ++i) some.insert(h.any<Visit>().id);
    return {some.begin(), some.end()};
}

ChangeSet visitsNow(Hand& h, const EditContext& c) {
    VisitPut put;
    if (h.oneIn(2)) put.supers = std::optional(h.upTo(3));
    if (h.oneIn(2)) put.by = h.who();
    if (h.oneIn(3)) put.note = PutNote{h.note(), false};
    return changeVisits(c, someVisits(h), put);
}

ChangeSet sameVisit(Hand& h, const EditContext& c) {
    h.needFew(Table::Visit);
    const ColonyId one = h.living();
    Visit like;
    like.day = h.today;
    like.supers = h.upTo(2);
    like.note = h.note();
    return logVisits(c, {one, h.otherLiving(one)}, like);
}

ChangeSet unionCheck(Hand& h, const EditContext& c) {
    h.needFew(Table::Visit);
    UnionSeen seen;
    seen.colony = h.living();
    seen.day = h.dayOf(seen.colony);
    seen.paperGone = h.oneIn(2);
    if (h.oneIn(2)) seen.eggs = h.oneIn(2);
    seen.by = h.who();
    return logUnionCheck(c, seen);
}

Transfer transferOf(Hand& h) {
    Transfer t;
    t.from = h.living();
    t.to = h.otherLiving(t.from);
    t.day = std::max(h.dayOf(t.from), h.dayOf(t.to));
    t.what = static_cast<TransferKind>(h.upTo(4));
    if (h.oneIn(2)) t.count = 1 + h.upTo(5);
    t.note = h.note();
    return t;
}

Feeding feedingOf(Hand& h) {
    Feeding f;
    f.colony = h.living();
    f.day = h.dayOf(f.colony);
    f.mix = QStringLiteral("3:2");
    f.volume = Millilitres{500 + h.upTo(9500)};
    f.by = h.who();
    return f;
}

MiteFall fallOf(Hand& h) {
    MiteFall f;
    f.colony = h.living();
    f.day = h.dayOf(f.colony);
    f.days = 1 + h.upTo(6);
    f.mites = h.upTo(60);
    return f;
}

const Kind kKinds[] = {
    {"logVisit", 60, [](Hand& h, const EditContext& c) { return logVisit(c, visitOf(h, c)); }},
    {"logVisits", 3, sameVisit},
    {"logUnionCheck", 4, unionCheck},
    {"changeVisit", 24, visitNow},
    {"changeVisits", 4, visitsNow},
    {"takeBackVisit", 30, [](Hand& h, const EditContext& c) { return takeBackVisit(c, h.old<Visit>().id); }},
    {"takeBackVisits", 2,
     [](Hand& h, const EditContext& c) {
         if (h.book().rows(Table::Visit).size() < 20) throw Nothing();
         return takeBackVisits(c, someVisits(h));
     }},
    {"logTransfer", 5,
     [](Hand& h, const EditContext& c) {
         h.needFew(Table::Transfer);
         return logTransfer(c, transferOf(h));
     }},
    {"changeTransfer", 3,
     [](Hand& h, const EditContext& c) {
         Transfer now = h.any<Transfer>();
         if (h.oneIn(2)) now.day = h.near(now.day);
         now.note = h.note();
         return changeTransfer(c, now);
     }},
    {"takeBackTransfer", 8, [](Hand& h, const EditContext& c) { return takeBackTransfer(c, h.old<Transfer>().id); }},
    {"logFeeding", 5,
     [](Hand& h, const EditContext& c) {
         h.needFew(Table::Feeding);
         return logFeeding(c, feedingOf(h));
     }},
    {"logFeedings", 2,
     [](Hand& h, const EditContext& c) {
         h.needFew(Table::Feeding);
         return logFeedings(c, {feedingOf(h), feedingOf(h)});
     }},
    {"changeFeeding", 3,
     [](Hand& h, const EditContext& c) {
         Feeding now = h.any<Feeding>();
         now.note = h.note();
         now.volume = Millilitres{500 + h.upTo(9500)};
         return changeFeeding(c, now);
     }},
    {"takeBackFeeding", 8, [](Hand& h, const EditContext& c) { return takeBackFeeding(c, h.old<Feeding>().id); }},
    {"logMiteFall", 4,
     [](Hand& h, const EditContext& c) {
         h.needFew(Table::MiteFall);
         return logMiteFall(c, fallOf(h));
     }},
    {"changeMiteFall", 2,
     [](Hand& h, const EditContext& c) {
         MiteFall now = h.any<MiteFall>();
         now.mites = h.upTo(60);
         return changeMiteFall(c, now);
     }},
    {"takeBackMiteFall", 6, [](Hand& h, const EditContext& c) { return takeBackMiteFall(c, h.old<MiteFall>().id); }},
};

} // namespace

std::span<const Kind> recordKinds() { return kKinds; }

} // namespace tests::soak
