#include "core/rules/calc/syrup.h"

#include "core/base/quantity.h"

#include <algorithm>
#include <iterator>

namespace core::rules::calc {

namespace {

struct Row {
    double percent;
    double kgPerL;
};
constexpr Row kRows[] = {{50, 1.2295}, {60, 1.2864}, {66, 1.3224}, {68, 1.3348}, {70, 1.3472}};

/// Thousandths of one side of a mix; 0 where it is no such number.
qint64 sideOf(QStringView text) {
    constexpr qint64 kMost = 100'000;
    const qint64 side = parseDecimal(text.trimmed().toString().replace(u',', u'.'), 3).value_or(0);
    return side > 0 && side <= kMost ? side : 0;
}

} // namespace

std::optional<Mix> mixOf(QStringView text) {
    const qsizetype colon = text.indexOf(u':');
    if (colon < 0) return std::nullopt;
    const qint64 sugar = sideOf(text.first(colon)), water = sideOf(text.sliced(colon + 1));
    if (sugar == 0 || water == 0) return std::nullopt;
    return Mix{static_cast<double>(sugar) / 1000, static_cast<double>(water) / 1000};
}

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
