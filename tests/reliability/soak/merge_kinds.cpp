#include "core/edit/divide_day.h"
#include "core/edit/merge_day.h"
#include "core/edit/merge_variant.h"
#include "tests/reliability/soak/drafts.h"

#include <algorithm>

// Merge days: asked for, printed, written back.

namespace tests::soak {

namespace {

constexpr size_t kMostDays = 16;
constexpr size_t kMostDivideStrips = 40; ///< what came of one is only taken back out of the history

ColonyId standingIn(Hand& h, const EditContext& c, YardId yard) {
    for (int i = 0; i < 8; ++i) {
        const ColonyId id = h.living();
        const auto open = c.openPlacement(id);
        if (open && c.stand(open->stand)->yard == yard) return id;
    }
    throw Nothing();
}

std::pair<ColonyId, ColonyId> pairIn(Hand& h, const EditContext& c, YardId yard) {
    const ColonyId one = standingIn(h, c, yard);
    const ColonyId other = standingIn(h, c, yard);
    if (one == other) throw Nothing();
    return {one, other};
}

template <class Strip> void addBegun(Hand& h, std::set<MergeDayId>& begun) {
    for (const auto& [id, row] : h.book().rows(tableOf<Strip>()))
        if (const auto strip = fromRow<Strip>(id, row); strip.outcome) begun.insert(strip.mergeDay);
}

/// Days of which something was written back already: nothing of what they ask changes.
std::set<MergeDayId> begunDays(Hand& h) {
    std::set<MergeDayId> begun;
    addBegun<MergeStrip>(h, begun);
    addBegun<DivideStrip>(h, begun);
    return begun;
}

bool manyDays(Hand& h) { return h.book().rows(Table::MergeDay).size() >= kMostDays + begunDays(h).size(); }

MergeDay openDay(Hand& h) {
    const auto begun = begunDays(h);
    return h.such<MergeDay>([&](const MergeDay& day) { return h.oneIn(30) || !begun.contains(day.id); });
}

/// One that is there, or where there are few a new one of these days.
MergeDay dayOf(Hand& h) {
    if (manyDays(h) || h.oneIn(2)) return openDay(h);
    MergeDay day;
    day.yard = h.yard();
    day.day = h.today - h.upTo(2);
    return day;
}

ChangeSet asked(Hand& h, const EditContext& c) {
    MergeAsked asked{dayOf(h), {}};
    if (h.oneIn(2)) asked.day.most = h.upTo(9);
    asked.day.note = h.note();
    const ColonyId one = h.living();
    asked.choices.push_back({{}, {}, MergeAsk::LeaveOut, one, {}, h.note()});
    const ColonyId pinned = h.otherLiving(one);
    const ColonyId with = h.otherLiving(pinned);
    if (with != one) asked.choices.push_back({{}, {}, h.oneOf({MergeAsk::Pin, MergeAsk::Top}), pinned, with, {}});
    return saveMergeDay(c, asked);
}

ChangeSet variant(Hand& h, const EditContext& c) {
    if (manyDays(h)) throw Nothing();
    const MergeDay of = openDay(h);
    return addMergeVariant(c, of.yard, of.day, of.id);
}

ChangeSet printed(Hand& h, const EditContext& c) {
    const MergeDay day = openDay(h);
    const auto [moved, host] = pairIn(h, c, day.yard);
    MergeStrip strip;
    strip.moved = moved;
    strip.host = host;
    strip.upper = host;
    return printMergeDay(c, day.id, {strip});
}

StripClose closeOf(Hand& h, const EditContext& c) {
    StripClose close;
    const MergeDay day = h.oneIn(2) ? h.any<MergeDay>() : dayOf(h);
    close.yard = day.yard;
    close.day = day.day;
    std::tie(close.moved, close.host) = pairIn(h, c, day.yard);
    if (h.oneIn(3)) close.how = LineageHow::ShakenOut;
    close.outcome = h.oneIn(2) ? StripOutcome::Done : StripOutcome::NotDone;
    if (close.outcome == StripOutcome::Done) h.needMany();
    close.note = h.note();
    close.by = h.who();
    return close;
}

ChangeSet divides(Hand& h, const EditContext& c) {
    const MergeDay day = dayOf(h);
    DividesAsked asked{day.yard, day.day, day.variant, {}, {}};
    if (!h.oneIn(3)) asked.queens = static_cast<DivideQueens>(h.upTo(2));
    asked.choices.push_back({{}, {}, h.living(), 1 + h.upTo(3), h.note()});
    return askDivides(c, asked);
}

ChangeSet dividesPrinted(Hand& h, const EditContext& c) {
    const MergeDay day = openDay(h);
    DivideStrip strip;
    strip.colony = standingIn(h, c, day.yard);
    return printDivides(c, day.id, {strip});
}

DivideClose divideClose(Hand& h, const EditContext& c) {
    if (h.book().rows(Table::DivideStrip).size() >= kMostDivideStrips) throw Nothing();
    const MergeDay day = h.oneIn(2) ? h.any<MergeDay>() : dayOf(h);
    DivideClose close{day.yard, day.day, standingIn(h, c, day.yard), DivideQueens::Own, StripOutcome::Done, {},
                      h.note(), h.who()};
    if (!h.oneIn(6)) close.outcome = StripOutcome::NotDone;
    if (close.outcome != StripOutcome::Done) return close;
    h.needRoom();
    close.made.push_back(freshColony(h, c));
    return close;
}

const Kind kKinds[] = {
    {"saveMergeDay", 3, asked},
    {"addMergeVariant", 1, variant},
    {"printMergeDay", 2, printed},
    {"closeStrip", 3, [](Hand& h, const EditContext& c) { return closeStrip(c, closeOf(h, c)); }},
    {"closeStripAsFact", 2, [](Hand& h, const EditContext& c) { return closeStripAsFact(c, closeOf(h, c)); }},
    {"reopenStrip", 6,
     [](Hand& h, const EditContext& c) {
         const auto strip = h.such<MergeStrip>([](const MergeStrip& s) { return s.outcome.has_value(); });
         return reopenStrip(c, strip.id);
     }},
    {"askDivides", 2, divides},
    {"printDivides", 2, dividesPrinted},
    {"closeDivide", 1, [](Hand& h, const EditContext& c) { return closeDivide(c, divideClose(h, c)); }},
    {"closeDivideAsFact", 1, [](Hand& h, const EditContext& c) { return closeDivideAsFact(c, divideClose(h, c)); }},
    {"takeBackMergeDay", 8, [](Hand& h, const EditContext& c) { return takeBackMergeDay(c, openDay(h).id); }},
};

} // namespace

std::span<const Kind> mergeKinds() { return kKinds; }

} // namespace tests::soak
