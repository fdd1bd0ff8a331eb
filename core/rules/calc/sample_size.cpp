#include "core/rules/calc/sample_size.h"

#include "core/rules/calc/binomial.h"

#include <algorithm>
#include <cmath>

namespace core::rules::calc {

double chanceOfNone(double perHundred, int bees) { return std::pow(1 - perHundred / 100, bees); }

std::optional<int> beesToFind(double perHundred, double chance) {
    const double bees = std::ceil(std::log1p(-chance) / std::log1p(-perHundred / 100));
    if (bees > kMostBees) return std::nullopt;
    return std::max(1, static_cast<int>(bees));
}

std::optional<int> beesForPrecision(double perHundred, double within) {
    constexpr double kZ = 1.959964; // two-sided 95 %, own calculation: normal distribution
    const double p = perHundred / 100;
    const double d = within / 100;
    const double normal = std::ceil(kZ * kZ * p * (1 - p) / (d * d));
    if (normal > kMostBees) return std::nullopt;
    for (int n = std::max(1, static_cast<int>(normal)); n <= kMostBees; ++n) {
        const Range r = exactInterval(std::llround(p * n), n);
        if (r.high - r.low <= 2 * d) return n;
    }
    return std::nullopt;
}

} // namespace core::rules::calc
