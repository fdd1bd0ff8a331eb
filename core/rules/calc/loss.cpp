#include "core/rules/calc/loss.h"

#include <algorithm>
#include <numeric>
#include <vector>

namespace core::rules::calc {

std::optional<Counted> lossOf(const PeriodCounts& c) {
    const qint64 atRisk = qint64(c.start) + c.splits + c.bought - c.removed;
    if (atRisk <= 0 || c.end < 0 || c.end > atRisk) return std::nullopt;
    return Counted{atRisk - c.end, atRisk};
}

std::optional<LossRates> lossRates(std::span<const Counted> keepers) {
    const auto overall = clusteredShare(keepers);
    if (!overall) return std::nullopt;
    std::vector<double> shares;
    for (const Counted& k : keepers)
        if (k.of > 0) shares.push_back(static_cast<double>(k.found) / static_cast<double>(k.of));
    std::sort(shares.begin(), shares.end());
    const size_t half = shares.size() / 2;
    const double median = shares.size() % 2 ? shares[half] : (shares[half - 1] + shares[half]) / 2;
    const double sum = std::accumulate(shares.begin(), shares.end(), 0.0);
    return LossRates{*overall, sum / static_cast<double>(shares.size()), median};
}

qint64 wholePercent(qint64 lost, qint64 of) { return (200 * lost + of) / (2 * of); }

} // namespace core::rules::calc
