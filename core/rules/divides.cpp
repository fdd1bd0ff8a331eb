#include "core/rules/divides.h"

#include "core/rules/limits.h"

#include <algorithm>

namespace core::rules {

namespace {

constexpr int kBroodMaxAgeDays = fixed::kBroodDays;

Reason whyDivide(const DayView& view, const ColonyFacts& f) {
    Reason why{"4.13"};
    why.southern = view.southern(f.colony);
    why.fact("brood noted", *f.broodDay).fact("counted", *f.counted);
    for (const char* limit : {"divide.brood_per_part", "divide.bees_per_part", "4.13 brood_days", "4.13 parts",
                              "4.13 divide_from", "4.13 divide_to"})
        why.limit(limit);
    return why;
}

} // namespace

std::optional<Divide> divideOf(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    if (!view.seasonsOf(c).divide || view.held(c) || f.lacksQueen || f.layingWorkers) return std::nullopt;
    if (!f.strength || !f.broodFrames || view.s.on - *f.broodDay > kBroodMaxAgeDays) return std::nullopt;
    const int byBrood = *f.broodFrames / view.s.settings.broodPerPart;
    const int byBees = f.strength->value / (4 * view.s.settings.beesPerPart);
    const int parts = std::min(byBrood, byBees);
    if (parts < 2) return std::nullopt;
    return Divide{c, parts, *f.strength, *f.broodFrames, whyDivide(view, f), parts};
}

} // namespace core::rules
