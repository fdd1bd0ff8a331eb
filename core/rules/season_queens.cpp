#include "core/rules/season_queens.h"

#include <map>

namespace core::rules {

namespace {

/// By colony with rows of its own: the year of the row that covers the day. No year, or none there that day: not
/// recorded.
std::map<ColonyId, std::optional<int>> heading(std::span<const Queen> queens, Day day) {
    std::map<ColonyId, std::pair<Day, std::optional<int>>> latest;
    for (const Queen& q : queens) {
        if (q.since > day) continue;
        const auto born = q.until && *q.until <= day ? std::nullopt : q.born;
        const auto [at, fresh] = latest.try_emplace(q.colony, q.since, born);
        if (!fresh && at->second.first < q.since) at->second = {q.since, born};
    }
    std::map<ColonyId, std::optional<int>> out;
    for (const auto& [colony, queen] : latest) out[colony] = queen.second;
    return out;
}

} // namespace

QueenAges queenAges(const Snapshot& s, std::span<const ColonyFacts> facts, std::span<const Queen> queens,
                    std::optional<YardIx> yard) {
    const auto rows = heading(queens, s.on);
    const int now = toDate(s.on).year();
    std::map<int, int> byYear;
    QueenAges out;
    for (const ColonyFacts& f : facts) {
        if (yard && f.yard != *yard) continue;
        ++out.living;
        const SnapColony& colony = s.colony(f.colony);
        const auto row = rows.find(colony.id);
        const auto born = row == rows.end() ? colony.queenBorn : row->second;
        if (f.queen == QueenSeen::None || f.layingWorkers)
            ++out.noQueen;
        else if (born && *born <= now)
            ++byYear[*born];
        else
            ++out.notRecorded;
    }
    if (byYear.empty()) return out;
    for (int year = byYear.rbegin()->first; year >= byYear.begin()->first; --year)
        out.years.push_back({year, byYear.contains(year) ? byYear[year] : 0});
    return out;
}

} // namespace core::rules
