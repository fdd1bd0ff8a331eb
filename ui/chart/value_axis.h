#pragma once

#include <vector>

namespace ui::chart {

/// A value axis with round steps: from `low` to `high` in `steps` of the same size.
struct ValueAxis {
    double low = 0, high = 1, step = 1;
    int steps() const;                 ///< at least 1
    std::vector<double> ticks() const; ///< low, …, high
    int decimals() const;              ///< that a tick needs
};

/// `least`, `most`: of all that is to be seen. `mostSteps` >= 1: as the height has room for. Steps are 1, 2 or 5 times
/// a power of ten, never below 10^-decimals.
ValueAxis valueAxis(double least, double most, bool fromZero, int mostSteps, int decimals);

} // namespace ui::chart
