#include "core/rules/calc/brood_days.h"

#include <cmath>

namespace core::rules::calc {

BroodDays broodDays(Day laid, const CasteDays& caste) {
    const auto after = [&](double days) { return laid + static_cast<int>(std::ceil(days)); };
    return {after(caste.hatches), after(caste.sealed), after(caste.emerges)};
}

Day broodless(Day lastEggs) { return lastEggs + static_cast<int>(kDroneDays.emerges); }

} // namespace core::rules::calc
