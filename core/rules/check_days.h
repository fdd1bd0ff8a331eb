#pragma once

#include "core/base/day.h"
#include "core/model/settings.h"

#include <map>
#include <utility>

namespace core::rules {

/// Rule 4.4.10 (a) and (b): which days of a check or a negative count by its age and the season, and until when.
class CheckDays {
public:
    /// `limits`: strictLimits(); kept by reference.
    explicit CheckDays(const Settings& limits) : m_limits(limits) {}

    /// The first day whose check counts on `on`.
    Day from(Day on, bool southern) const;
    /// The last day on which a check of that day counts, where nothing else happens.
    Day countsUntil(Day check, bool southern);

private:
    const Settings& m_limits;
    std::map<std::pair<qint64, bool>, Day> m_known;
};

} // namespace core::rules
