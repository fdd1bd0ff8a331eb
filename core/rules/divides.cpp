#include "core/rules/divides.h"

#include <algorithm>

namespace core::rules {

namespace {

constexpr int kBroodMaxAgeDays = 30;

} // namespace

std::optional<Divide> divideOf(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    if (!view.seasonsOf(c).divide || view.held(c) || f.lacksQueen || f.layingWorkers) return std::nullopt;
    if (!f.strength || !f.broodFrames || view.s.on - *f.broodDay > kBroodMaxAgeDays) return std::nullopt;
    const int byBrood = *f.broodFrames / view.s.settings.broodPerPart;
    const int byBees = f.strength->value / (4 * view.s.settings.beesPerPart);
    const int parts = std::min(byBrood, byBees);
    if (parts < 2) return std::nullopt;
    return Divide{c, parts, *f.strength, *f.broodFrames};
}

} // namespace core::rules
