#include "core/rules/mite_fall_weeks.h"

#include <algorithm>

namespace core::rules {

namespace {

struct PlacedFall {
    const MiteFall* fall;
    bool southern;
};
using PlacedFalls = std::map<ColonyIx, PlacedFall>;

FallWeek fallWeek(const SeasonBook& book, calc::DayRange days, const PlacedFalls& falls, FallKind kind) {
    FallWeek week;
    week.days = days;
    week.colonies = static_cast<int>(falls.size());
    const PlacedFall* last = nullptr;
    bool both = false;
    for (const auto& [colony, placed] : falls) {
        const double rate = mitesADay(*placed.fall);
        week.mean += rate / week.colonies;
        if (!last || rate > week.highest) week.highestOf = colony;
        week.highest = std::max(week.highest, rate);
        both = both || (last && last->southern != placed.southern);
        if (!last || last->fall->day < placed.fall->day) last = &placed;
        const auto limit = dropThreshold(book.s.settings, placed.fall->day, placed.southern);
        if (kind == FallKind::Natural && limit && above(*limit, *placed.fall)) week.over.push_back(colony);
    }
    week.above = static_cast<int>(week.over.size());
    if (!both) week.threshold = dropThreshold(book.s.settings, last->fall->day, last->southern);
    return week;
}

} // namespace

std::vector<FallWeek> fallByWeek(const SeasonBook& book, std::span<const MiteFall> falls,
                                 const std::map<ColonyId, std::vector<TreatedDays>>& treated, FallKind kind) {
    const auto weeks = weeksBetween(book.from, book.s.on);
    const ColonyPlaces places(book.s);
    std::map<size_t, PlacedFalls> counted;
    for (const MiteFall& f : falls) {
        if (f.day < book.from || f.day > book.s.on) continue;
        const auto c = places.find(f.colony);
        const auto yard = c ? places.yardOn(*c, f.day) : std::nullopt;
        if (!yard || (book.yard && yard != book.yard)) continue;
        const auto of = treated.find(f.colony);
        const bool during = of != treated.end() && whileTreated(f, of->second);
        if (during == (kind == FallKind::WhileTreated))
            counted[weekOf(weeks, f.day)].insert_or_assign(*c, PlacedFall{&f, book.s.yard(*yard).southern()});
    }
    std::vector<FallWeek> out;
    for (const auto& [week, placed] : counted) out.push_back(fallWeek(book, weeks[week], placed, kind));
    return out;
}

} // namespace core::rules
