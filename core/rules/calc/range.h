#pragma once

#include "core/base/day.h"

namespace core::rules::calc {

/// From `low` to `high`, both included. What it is a range of (an interval of 95 %, a range between sources) and its
/// unit stand where it is returned.
struct Range {
    double low = 0;
    double high = 0;
    friend bool operator==(const Range&, const Range&) = default;
};

/// From the first to the last day, both included.
struct DayRange {
    Day first;
    Day last;
    friend bool operator==(const DayRange&, const DayRange&) = default;
};

/// The level of every interval here: 95 of 100 such intervals hold the true figure.
inline constexpr double kLevel = 0.95;

} // namespace core::rules::calc
