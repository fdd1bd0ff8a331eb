#include "core/rules/mite_washes.h"

#include "core/rules/limits.h"

namespace core::rules {

LatestWashes latestWashes(const Snapshot& s, std::span<const ColonyFacts> facts, std::optional<YardIx> yard) {
    LatestWashes out;
    PlacedSamples samples;
    std::map<YardIx, int> living;
    for (const ColonyFacts& f : facts) {
        if (yard && f.yard != *yard) continue;
        ++out.living;
        ++living[f.yard];
        if (!f.mites) {
            ++out.never;
        } else if (s.on - f.mites->day > fixed::kSampleDays) {
            ++out.old;
        } else {
            LatestWash wash{f.colony, f.mites->day, {f.mites->mites, f.mites->sample}, {}, {}, false};
            wash.interval = calc::mitesInterval(wash.counted);
            wash.threshold = miteThreshold(s.settings, s.on, s.yard(f.yard).southern());
            wash.above = qint64(wash.counted.mites) * 100'000'000 > wash.threshold.value * wash.counted.bees;
            samples.emplace(f.colony, PlacedSample{s.on, f.yard, wash.counted});
            out.washes.push_back(std::move(wash));
        }
    }
    if (!samples.empty()) out.estimate = miteEstimate(s, {s.on - fixed::kSampleDays, s.on}, living, yard, samples);
    return out;
}

} // namespace core::rules
