#include "demo/queens_and_feed.h"

#include "core/rules/calc/queen_mark.h"
#include "demo/chance.h"

#include <algorithm>

namespace demo {

namespace {

constexpr int kLastYear = 2026;

std::uint64_t key(core::ColonyId colony) { return static_cast<std::uint64_t>(colony.value); }

/// The calculator's colours are the first of the book's, in its order.
core::QueenMark colourOf(int year) {
    using Mark = core::rules::calc::QueenMark;
    switch (core::rules::calc::queenMarkOf(year)) {
    case Mark::White:
        return core::QueenMark::White;
    case Mark::Yellow:
        return core::QueenMark::Yellow;
    case Mark::Red:
        return core::QueenMark::Red;
    case Mark::Green:
        return core::QueenMark::Green;
    case Mark::Blue:
        break;
    }
    return core::QueenMark::Blue;
}

/// Most bear the colour of their year; few the one that was still in the hand from the year before.
std::optional<core::QueenMark> markOf(int born, std::uint64_t seed, std::uint64_t c, std::uint64_t n) {
    const int dice = chance(20, seed, c, n, 21);
    if (dice < 14) return colourOf(born);
    if (dice < 17) return core::QueenMark::Unmarked;
    return dice < 18 ? std::optional(colourOf(born - 1)) : std::nullopt;
}

core::Queen queenBorn(const Kept& hive, int born, core::Day since) {
    const auto c = key(hive.colony);
    const auto n = static_cast<std::uint64_t>(born);
    core::Queen q;
    q.colony = hive.colony;
    q.since = since;
    q.born = born;
    q.mark = markOf(born, hive.seed, c, n);
    const bool marked = q.mark && *q.mark != core::QueenMark::Unmarked;
    if (marked && chance(3, hive.seed, c, n, 22) == 0) q.tag = QString::number(1 + chance(99, hive.seed, c, n, 23));
    switch (chance(6, hive.seed, c, n, 24)) {
    case 0:
        q.origin = core::QueenOrigin::Bought;
        q.source = QStringLiteral("line 12");
        break;
    case 1:
        q.origin = core::QueenOrigin::Supersedure;
        q.mother = hive.colony;
        break;
    case 2:
        break; // not recorded
    default:
        q.origin = core::QueenOrigin::Raised;
        if (hive.neighbour != hive.colony && hive.neighbourSince <= since) q.mother = hive.neighbour;
    }
    return q;
}

/// In the season of her birth she begins to lay.
core::Day layingFrom(const Kept& hive, int born) {
    return core::dayOf(born, 5, 20) + chance(60, hive.seed, key(hive.colony), static_cast<std::uint64_t>(born), 25);
}

core::Feeding fed(const Kept& hive, core::Day day, const char* mix, int millilitres) {
    core::Feeding f;
    f.colony = hive.colony;
    f.day = day;
    f.mix = QString::fromLatin1(mix);
    f.volume = core::Millilitres{millilitres};
    f.by = key(hive.colony) % 2 == 0 ? QStringLiteral("Wren") : QStringLiteral("Alder");
    return f;
}

} // namespace

std::vector<core::Queen> queensOf(const Kept& hive) {
    if (!hive.born) return {};
    std::vector<core::Queen> queens; // newest first
    int born = *hive.born;
    while (true) {
        const bool first = layingFrom(hive, born) <= hive.since;
        queens.push_back(queenBorn(hive, born, first ? hive.since : layingFrom(hive, born)));
        if (first) break;
        born -= 2 + chance(2, hive.seed, key(hive.colony), static_cast<std::uint64_t>(born), 26);
    }
    std::ranges::reverse(queens);
    std::erase_if(queens, [&](const core::Queen& q) { return hive.ended && q.since > *hive.ended; });
    for (size_t i = 0; i + 1 < queens.size(); ++i) {
        queens[i].until = queens[i + 1].since;
        const bool own = queens[i + 1].origin == core::QueenOrigin::Supersedure;
        queens[i].fate = own ? core::QueenFate::Superseded : core::QueenFate::Replaced;
    }
    if (hive.missing && !queens.empty() && queens.back().since <= *hive.missing) {
        queens.back().until = hive.missing;
        queens.back().fate = core::QueenFate::Missing;
    }
    return queens;
}

std::vector<core::Feeding> feedingsOf(const Kept& hive) {
    std::vector<core::Feeding> all;
    const auto c = key(hive.colony);
    for (int year = kLastYear - hive.years + 1; year <= kLastYear; ++year) {
        const auto y = static_cast<std::uint64_t>(year);
        if (chance(7, hive.seed, c, y, 31) == 0) {
            core::Feeding fondant = fed(hive, core::dayOf(year, 2, 14), "", 0);
            fondant.what = core::FeedKind::Fondant;
            fondant.volume.reset();
            fondant.weight = core::Decagrams{250};
            all.push_back(fondant);
        }
        if (chance(5, hive.seed, c, y, 32) == 0) all.push_back(fed(hive, core::dayOf(year, 4, 12), "1:1", 1000));
        const int meals = chance(4, hive.seed, c, y, 33); // a quarter are heavy enough
        for (int i = 0; i < std::min(meals, 2); ++i)
            all.push_back(
                fed(hive, core::dayOf(year, 8, 27) + 7 * i, "3:2", 3000 + 1000 * chance(3, hive.seed, c, y, 34)));
    }
    if (hive.light) all.push_back(fed(hive, core::dayOf(kLastYear, 9, 15), "3:2", 4000));
    std::erase_if(all,
                  [&](const core::Feeding& f) { return f.day < hive.since || (hive.ended && f.day > *hive.ended); });
    return all;
}

std::vector<core::MiteFall> miteFallsOf(const Kept& hive) {
    if (!hive.board) return {};
    std::vector<core::MiteFall> all;
    const auto c = key(hive.colony);
    const auto add = [&](int year, int month, int day, int most) {
        const auto when = static_cast<std::uint64_t>(year * 12 + month);
        core::MiteFall f;
        f.colony = hive.colony;
        f.day = core::dayOf(year, month, day);
        f.days = 5;
        f.mites = chance(most, hive.seed, c, when, 41) * (1 + chance(3, hive.seed, c, when, 42));
        f.by = c % 2 == 0 ? QStringLiteral("Wren") : QStringLiteral("Alder");
        all.push_back(std::move(f));
    };
    for (int year = kLastYear - hive.years + 1; year <= kLastYear; ++year) {
        add(year, 7, 10, 24);
        if (hive.treated && year == kLastYear) add(year, 8, 20, 120);
        if (year == kLastYear && !hive.treated) add(year, 9, 10, 30);
        if (year < kLastYear) add(year, 11, 8, 5);
    }
    std::erase_if(all, [&](const core::MiteFall& f) {
        return f.day - f.days < hive.since || (hive.ended && f.day > *hive.ended);
    });
    return all;
}

} // namespace demo
