#include "core/edit/queens.h"
#include "tests/reliability/soak/hand.h"

// Queens at the head of colonies.

namespace tests::soak {

namespace {

std::optional<QueenBefore> before(Hand& h) {
    return QueenBefore{h.oneOf({QueenFate::Replaced, QueenFate::Superseded, QueenFate::Dead}), {}};
}

ChangeSet fresh(Hand& h, const EditContext& c) {
    h.needFew(Table::Queen);
    Queen q;
    q.colony = h.living();
    q.since = h.today - h.upTo(3);
    if (h.oneIn(2)) q.born = 2020 + h.upTo(6);
    if (h.oneIn(2)) q.mark = static_cast<QueenMark>(h.upTo(5));
    if (h.oneIn(3)) q.mother = h.living();
    q.note = h.note();
    return newQueen(c, q, before(h));
}

ChangeSet now(Hand& h, const EditContext& c) {
    Queen queen = h.any<Queen>();
    if (h.oneIn(4)) queen.since = h.near(queen.since);
    queen.tag = QString::number(h.upTo(99));
    queen.note = h.note();
    return changeQueen(c, queen);
}

const Kind kKinds[] = {
    {"newQueen", 6, fresh},
    {"changeQueen", 4, now},
    {"endQueen", 3,
     [](Hand& h, const EditContext& c) {
         const Queen q = h.such<Queen>([](const Queen& x) { return !x.until; });
         return endQueen(c, q.id, std::max(q.since, h.today - h.upTo(3)), static_cast<QueenFate>(h.upTo(5)));
     }},
    {"moveQueen", 2,
     [](Hand& h, const EditContext& c) {
         const Queen q = h.such<Queen>([](const Queen& x) { return !x.until; });
         return moveQueen(c, q.id, h.otherLiving(q.colony), h.today, before(h));
     }},
    {"takeBackQueen", 10, [](Hand& h, const EditContext& c) { return takeBackQueen(c, h.old<Queen>().id); }},
    {"takeBackQueenEnd", 2,
     [](Hand& h, const EditContext& c) {
         return takeBackQueenEnd(c, h.such<Queen>([](const Queen& x) { return x.until.has_value(); }).id);
     }},
};

} // namespace

std::span<const Kind> queenKinds() { return kKinds; }

} // namespace tests::soak
