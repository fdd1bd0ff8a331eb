#pragma once

#include "core/base/day.h"

#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace core::rules {

/// The days of one kind of record for each of many subjects (colonies or yards), ascending, in one array.
class DaysBy {
public:
    DaysBy() = default;
    /// Rows of (position of the subject, day) in any order.
    DaysBy(size_t subjects, std::vector<std::pair<qint32, Day>> rows);
    std::span<const Day> of(qint32 subject) const;

private:
    std::vector<qint32> m_start;
    std::vector<Day> m_days;
};

// Of ascending days:
std::optional<Day> latestUpTo(std::span<const Day> days, Day t);
std::optional<Day> earliestFrom(std::span<const Day> days, Day from);
/// Whether one lies in [first, last].
bool anyWithin(std::span<const Day> days, Day first, Day last);

/// The later of two days, either of which may be none.
std::optional<Day> later(std::optional<Day> a, std::optional<Day> b);

} // namespace core::rules
