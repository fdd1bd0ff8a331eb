#include "core/edit/kit.h"
#include "core/edit/kit_end.h"
#include "core/model/kit_words.h"
#include "tests/reliability/soak/hand.h"

#include <algorithm>

// Kit counted, carried, kept apart, burned or sterilised.

namespace tests::soak {

namespace {

KitPlace placeOf(const Kit& lot) { return {lot.yard, lot.part, lot.state, lot.colony}; }

KitPlace pile(Hand& h) {
    if (!h.oneIn(3) && !h.book().rows(Table::Kit).empty()) return placeOf(h.any<Kit>());
    KitPlace place;
    if (h.oneIn(2)) place.yard = h.yard();
    place.part = h.oneOf({kit::kLid, kit::kFloor, kit::kStrap});
    place.state = h.oneOf({kit::kUsable, kit::kToClean, kit::kQuarantined});
    const auto& lots = h.book().rows(Table::Kit);
    const auto apart = [](const auto& lot) { return fromRow<Kit>(lot.first, lot.second).state == kit::kQuarantined; };
    if (std::ranges::none_of(lots, apart)) place.state = kit::kQuarantined;
    if (place.state == kit::kQuarantined) place.colony = h.living();
    return place;
}

ChangeSet counted(Hand& h, const EditContext& c) {
    h.needFew(Table::Kit);
    return countKit(c, pile(h), h.upTo(12));
}

ChangeSet cleaned(Hand& h, const EditContext& c) {
    const Kit lot = h.such<Kit>([](const Kit& x) { return x.count > 0 && !kit::keepsColony(x.state); });
    KitMove move{placeOf(lot), 1 + h.upTo(lot.count - 1), lot.yard, lot.state};
    if (h.oneIn(2)) move.toYard = h.yard();
    move.toState = lot.state == kit::kToClean ? kit::kUsable : kit::kToClean;
    return moveKit(c, move);
}

ChangeSet ended(Hand& h, const EditContext& c) {
    h.needFew(Table::KitEnd);
    const Kit lot = h.such<Kit>([](const Kit& x) { return x.count > 0 && x.state == kit::kQuarantined; });
    const bool burned = h.oneIn(2);
    KitMove move{placeOf(lot), 1 + h.upTo(lot.count - 1), lot.yard, burned ? kit::kBurned : kit::kSterilised};
    move.end = KitEnding{burned ? KitEndHow::Burned : KitEndHow::Dipped, h.today, h.who(), {}, h.note()};
    return moveKit(c, move);
}

ChangeSet endNow(Hand& h, const EditContext& c) {
    KitEnd now = h.any<KitEnd>();
    now.day = h.near(now.day);
    now.paper = QString::number(h.upTo(99));
    return changeKitEnd(c, now);
}

ChangeSet countedBack(Hand& h, const EditContext& c) {
    const Kit lot = h.old<Kit>();
    // What ended that way is not forgotten, while its end stands in the book.
    if (lot.state == kit::kBurned || lot.state == kit::kSterilised) throw Nothing();
    return takeBackKit(c, placeOf(lot));
}

const Kind kKinds[] = {
    {"countKit", 4, counted},
    {"moveKit", 3, [](Hand& h, const EditContext& c) { return h.oneIn(3) ? cleaned(h, c) : ended(h, c); }},
    {"takeBackKit", 40, countedBack},
    {"changeKitEnd", 1, endNow},
    {"takeBackKitEnd", 6, [](Hand& h, const EditContext& c) { return takeBackKitEnd(c, h.old<KitEnd>().id); }},
};

} // namespace

std::span<const Kind> kitKinds() { return kKinds; }

} // namespace tests::soak
