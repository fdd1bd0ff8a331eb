#include "core/rules/calc/brood.h"

#include "core/rules/calc/brood_days.h"

#include <cmath>

namespace core::rules::calc {

Brood broodOn(Quarters frames, const CombShare& comb) {
    const double deep = frames.frames() * comb.share;
    const auto whole = [](double cells) { return std::floor(cells + 0.5); };
    const Range cells{whole(deep * kCellsPerFrame.low), whole(deep * kCellsPerFrame.high)};
    const double days = kWorkerDays.emerges;
    return {cells, deep * 2 * kDeepCombCm2, {whole(cells.low / days), whole(cells.high / days)}, comb.assumed};
}

double cellsPerDm2(double cellWidthMm) {
    const double along = 100 / cellWidthMm;
    return 4 / std::sqrt(3.0) * along * along;
}

} // namespace core::rules::calc
