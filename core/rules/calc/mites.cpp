#include "core/rules/calc/mites.h"

#include "core/rules/calc/binomial.h"
#include "core/rules/calc/student.h"

#include <algorithm>
#include <cmath>

namespace core::rules::calc {

namespace {

std::optional<Range> exactPerHundred(qint64 mites, qint64 bees) {
    if (mites > bees) return std::nullopt;
    const Range r = exactInterval(mites, bees);
    return Range{100 * r.low, 100 * r.high};
}

/// By Student's t over the colonies, not below 0.
Range meanInterval(std::span<const MiteSample> samples, double mean) {
    double squares = 0;
    for (const MiteSample& s : samples) squares += std::pow(mitesPerHundred(s) - mean, 2);
    const auto n = static_cast<double>(samples.size());
    const int freedom = static_cast<int>(samples.size()) - 1;
    const double reach = studentT(freedom) * std::sqrt(squares / freedom / n);
    return {std::max(0.0, mean - reach), mean + reach};
}

} // namespace

double mitesPerHundred(const MiteSample& sample) { return 100.0 * sample.mites / sample.bees; }

std::optional<Range> mitesInterval(const MiteSample& sample) { return exactPerHundred(sample.mites, sample.bees); }

std::optional<YardMites> yardMites(std::span<const MiteSample> samples, int inYard) {
    if (samples.empty()) return std::nullopt;
    YardMites yard;
    yard.colonies = static_cast<int>(samples.size());
    yard.enough = yard.colonies >= std::min(kColoniesToSample, inYard);
    qint64 mites = 0;
    qint64 bees = 0;
    for (const MiteSample& s : samples) {
        yard.mean += mitesPerHundred(s) / yard.colonies;
        yard.highest = std::max(yard.highest, mitesPerHundred(s));
        mites += s.mites;
        bees += s.bees;
    }
    if (yard.colonies == 1) return yard;
    yard.interval = meanInterval(samples, yard.mean);
    if (const auto exact = exactPerHundred(mites, bees))
        yard.interval = {std::min(yard.interval->low, exact->low), std::max(yard.interval->high, exact->high)};
    return yard;
}

double mitesADay(int fallen, int days) { return static_cast<double>(fallen) / days; }

} // namespace core::rules::calc
