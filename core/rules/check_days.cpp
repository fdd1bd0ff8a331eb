#include "core/rules/check_days.h"

#include "core/rules/limits.h"
#include "core/rules/season.h"

#include <algorithm>

namespace core::rules {

Day CheckDays::from(Day on, bool southern) const {
    const Day season = std::min(latestStart(on, fixed::kCheckSeason, southern), on - m_limits.checkGraceDays);
    return std::max(on - m_limits.checkMaxAgeDays, season);
}

Day CheckDays::countsUntil(Day check, bool southern) {
    const auto [at, made] = m_known.try_emplace({check.number, southern}, check);
    while (made && from(at->second + 1, southern) <= check) at->second = at->second + 1;
    return at->second;
}

} // namespace core::rules
