#include "core/rules/hold_days.h"

#include <algorithm>

namespace core::rules {

DaysBy::DaysBy(size_t subjects, std::vector<std::pair<qint32, Day>> rows) : m_start(subjects + 1, 0) {
    std::sort(rows.begin(), rows.end());
    m_days.reserve(rows.size());
    for (const auto& [subject, day] : rows) {
        ++m_start[static_cast<size_t>(subject) + 1];
        m_days.push_back(day);
    }
    for (size_t i = 1; i < m_start.size(); ++i) m_start[i] += m_start[i - 1];
}

std::span<const Day> DaysBy::of(qint32 subject) const {
    const auto i = static_cast<size_t>(subject);
    const auto first = static_cast<size_t>(m_start[i]);
    return std::span(m_days).subspan(first, static_cast<size_t>(m_start[i + 1]) - first);
}

std::optional<Day> latestUpTo(std::span<const Day> days, Day t) {
    const auto after = std::upper_bound(days.begin(), days.end(), t);
    return after == days.begin() ? std::nullopt : std::optional(*(after - 1));
}

std::optional<Day> earliestFrom(std::span<const Day> days, Day from) {
    const auto at = std::lower_bound(days.begin(), days.end(), from);
    return at == days.end() ? std::nullopt : std::optional(*at);
}

bool anyWithin(std::span<const Day> days, Day first, Day last) {
    const auto at = earliestFrom(days, first);
    return at && *at <= last;
}

std::optional<Day> later(std::optional<Day> a, std::optional<Day> b) { return std::max(a, b); }

} // namespace core::rules
