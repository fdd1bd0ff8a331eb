#include "core/rules/season_book.h"

#include <algorithm>

namespace core::rules {

std::vector<calc::DayRange> weeksBetween(Day from, Day until) {
    std::vector<calc::DayRange> weeks;
    for (Day first = from; first <= until;) {
        const Day sunday = first + (7 - toDate(first).dayOfWeek());
        weeks.push_back({first, std::min(sunday, until)});
        first = sunday + 1;
    }
    return weeks;
}

size_t weekOf(const std::vector<calc::DayRange>& weeks, Day day) {
    const auto at = std::ranges::lower_bound(weeks, day, {}, &calc::DayRange::last);
    return static_cast<size_t>(at - weeks.begin());
}

ColonyPlaces::ColonyPlaces(const Snapshot& s) : m_s(s) {
    m_byId.reserve(s.colonies.size());
    for (size_t i = 0; i < s.colonies.size(); ++i)
        m_byId.emplace(s.colonies[i].id.value, ColonyIx{static_cast<qint32>(i)});
}

std::optional<ColonyIx> ColonyPlaces::find(ColonyId id) const {
    const auto at = m_byId.find(id.value);
    return at == m_byId.end() ? std::nullopt : std::optional(at->second);
}

std::optional<YardIx> ColonyPlaces::livingIn(ColonyIx c, Day day) const {
    const SnapColony& colony = m_s.colony(c);
    if (colony.since > day || (colony.ended && *colony.ended <= day)) return std::nullopt;
    return yardOn(c, day);
}

std::optional<YardIx> ColonyPlaces::yardOn(ColonyIx c, Day day) const {
    std::optional<YardIx> yard;
    for (const SnapStay& stay : m_s.staysOf(c)) {
        if (stay.since > day) break;
        yard = stay.yard;
    }
    return yard;
}

bool stoodThere(const SeasonBook& book, ColonyIx c) {
    return !book.yard ||
           std::ranges::any_of(book.s.staysOf(c), [&](const SnapStay& stay) { return stay.yard == *book.yard; });
}

} // namespace core::rules
