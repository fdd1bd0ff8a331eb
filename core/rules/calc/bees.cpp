#include "core/rules/calc/bees.h"

#include <cmath>

namespace core::rules::calc {

namespace {

constexpr int kCovered = 2430;

const BeesPerFrame kPerFrame[] = {
    {1400, "average found on an occupied frame, not what it can hold",
     "Simpson 1969, as described in Burgett, Burikam, J. Econ. Entomol. 78:1154-1156, 1985"},
    {1900, "both sides under a single layer of bees",
     "Kauffeld, 1970s, as described in Burgett, Burikam, J. Econ. Entomol. 78:1154-1156, 1985"},
    {kCovered, "both sides fully covered",
     "Aurell et al. 2024, data of an autumn trial, J. Insect Science (bees / frames of bees); from memory also "
     "Burgett, "
     "Burikam 1985"},
    {2500, "rule of thumb: 12 frames, about 30000 bees",
     "USDA-ARS on DeGrandi-Hoffman et al., J. Econ. Entomol. 112:2524-2533, 2019, as reported by Farm Progress"},
};

} // namespace

std::span<const BeesPerFrame> beesPerFrame() { return kPerFrame; }

Bees beesOn(Quarters frames, const CombShare& comb) {
    const double deep = frames.frames() * comb.share;
    const auto whole = [&](int perFrame) { return std::floor(deep * perFrame + 0.5); };
    return {{whole(std::begin(kPerFrame)->bees), whole(std::rbegin(kPerFrame)->bees)}, whole(kCovered), comb.assumed};
}

} // namespace core::rules::calc
