#include "core/rules/hold_standing.h"

#include <algorithm>

namespace core::rules {

namespace {

Day standsUntil(const Snapshot& s, const Gifts& gifts, ColonyIx ix) {
    const SnapColony& colony = s.colony(ix);
    if (colony.living()) return s.on;
    const auto taken = gifts.from(ix);
    if (colony.end == EndKind::United || taken.empty()) return *colony.ended;
    return std::max(*colony.ended, taken.back().day);
}

} // namespace

Standing::Standing(const Snapshot& s, const Gifts& gifts) : m_colonyStart(s.colonies.size() + 1, 0) {
    m_byColony.reserve(s.stays.size());
    size_t at = 0;
    for (size_t i = 0; i < s.colonies.size(); ++i) {
        const ColonyIx ix{static_cast<qint32>(i)};
        const size_t first = m_byColony.size();
        for (; at < s.stays.size() && s.stays[at].colony == ix; ++at) {
            const SnapStay& stay = s.stays[at];
            const Day until = stay.until.value_or(s.on);
            if (m_byColony.size() > first && m_byColony.back().yard == stay.yard)
                m_byColony.back().until = until;
            else
                m_byColony.push_back({ix, stay.yard, stay.since, until});
        }
        if (m_byColony.size() > first) m_byColony.back().until = standsUntil(s, gifts, ix);
        m_colonyStart[i + 1] = static_cast<qint32>(m_byColony.size());
    }
    groupByYard(s.yards.size());
}

void Standing::groupByYard(size_t yards) {
    m_yardStart.assign(yards + 1, 0);
    m_byYard = m_byColony;
    std::stable_sort(m_byYard.begin(), m_byYard.end(),
                     [](const YardStay& a, const YardStay& b) { return a.yard < b.yard; });
    for (const YardStay& stay : m_byYard) ++m_yardStart[static_cast<size_t>(stay.yard.value) + 1];
    for (size_t i = 1; i < m_yardStart.size(); ++i) m_yardStart[i] += m_yardStart[i - 1];
}

std::span<const YardStay> Standing::of(ColonyIx colony) const {
    const auto i = static_cast<size_t>(colony.value);
    const auto first = static_cast<size_t>(m_colonyStart[i]);
    return std::span(m_byColony).subspan(first, static_cast<size_t>(m_colonyStart[i + 1]) - first);
}

std::span<const YardStay> Standing::in(YardIx yard) const {
    const auto i = static_cast<size_t>(yard.value);
    const auto first = static_cast<size_t>(m_yardStart[i]);
    return std::span(m_byYard).subspan(first, static_cast<size_t>(m_yardStart[i + 1]) - first);
}

bool Standing::stoodIn(ColonyIx colony, YardIx yard, Day day) const {
    const auto stays = of(colony);
    return std::any_of(stays.begin(), stays.end(), [&](const YardStay& stay) {
        return stay.yard == yard && stay.since <= day && day <= stay.until;
    });
}

} // namespace core::rules
