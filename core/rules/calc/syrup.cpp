#include "core/rules/calc/syrup.h"

#include <algorithm>
#include <iterator>

namespace core::rules::calc {

namespace {

struct Row {
    double percent;
    double kgPerL;
};
constexpr Row kRows[] = {{50, 1.2295}, {60, 1.2864}, {66, 1.3224}, {68, 1.3348}, {70, 1.3472}};

} // namespace

double sugarPercent(const Mix& mix) { return 100 * mix.sugarKg / (mix.sugarKg + mix.waterKg); }

std::optional<double> densityKgPerL(double percent) {
    if (percent < std::begin(kRows)->percent || percent > std::rbegin(kRows)->percent) return std::nullopt;
    const Row* above = std::find_if(std::begin(kRows) + 1, std::end(kRows) - 1,
                                    [&](const Row& row) { return percent <= row.percent; });
    const Row* below = above - 1;
    const double part = (percent - below->percent) / (above->percent - below->percent);
    return below->kgPerL + part * (above->kgPerL - below->kgPerL);
}

Syrup syrupOf(const Mix& mix) {
    Syrup syrup;
    syrup.sugarPercent = sugarPercent(mix);
    syrup.kg = mix.sugarKg + mix.waterKg;
    syrup.storesKg = mix.sugarKg / kSugarInStores;
    syrup.saturated = syrup.sugarPercent > kSaturatedPercent;
    if (const auto density = densityKgPerL(syrup.sugarPercent)) {
        syrup.litres = syrup.kg / *density;
        syrup.sugarKgPerL = mix.sugarKg / *syrup.litres;
        syrup.storesKgPerL = syrup.storesKg / *syrup.litres;
    }
    return syrup;
}

} // namespace core::rules::calc
