#include "core/rules/hold_checks.h"

#include <algorithm>

namespace core::rules {

Checks::Checks(const Snapshot& s, const Settings& limits, const Treated& treated)
    : m_snapshot(s), m_limits(limits), m_treated(treated), m_start(s.colonies.size() + 1, 0) {
    for (const SnapCheck& check : s.checks) ++m_start[static_cast<size_t>(check.colony.value) + 1];
    for (size_t i = 1; i < m_start.size(); ++i) m_start[i] += m_start[i - 1];
}

std::span<const SnapCheck> Checks::of(ColonyIx colony) const {
    const auto i = static_cast<size_t>(colony.value);
    const auto first = static_cast<size_t>(m_start[i]);
    return std::span(m_snapshot.checks).subspan(first, static_cast<size_t>(m_start[i + 1]) - first);
}

bool Checks::clean(const SnapCheck& check) const {
    const int wanted =
        check.broodFrames < 0 ? m_limits.checkMinFrames : std::min<int>(m_limits.checkMinFrames, check.broodFrames);
    return check.checked >= 1 && check.checked >= wanted && !check.signs.broodTrouble();
}

bool Checks::full(const SnapCheck& check) const {
    return clean(check) && check.checked == check.broodFrames && check.broodFrames >= m_limits.checkFullFrames;
}

bool Checks::masked(const SnapCheck& check) const {
    return m_treated.within(check.colony, check.day, m_limits.traceMaskedDays);
}

template <class Fits> const SnapCheck* Checks::latest(ColonyIx colony, Day first, Day last, Fits fits) const {
    const auto checks = of(colony);
    auto after = std::upper_bound(checks.begin(), checks.end(), last,
                                  [](Day day, const SnapCheck& check) { return day < check.day; });
    while (after != checks.begin() && (--after)->day >= first)
        if (fits(*after)) return &*after;
    return nullptr;
}

const SnapCheck* Checks::latestClean(ColonyIx colony, Day first, Day last) const {
    return latest(colony, first, last, [this](const SnapCheck& check) { return clean(check); });
}

bool Checks::liftingWithin(ColonyIx colony, Day first, Day last) const {
    return latest(colony, first, last, [this](const SnapCheck& check) { return full(check) && !masked(check); });
}

bool Checks::fullWithin(ColonyIx colony, Day first, Day last, int treatedDays) const {
    return latest(colony, first, last, [&](const SnapCheck& check) {
        return full(check) && !m_treated.within(colony, check.day, treatedDays);
    });
}

} // namespace core::rules
