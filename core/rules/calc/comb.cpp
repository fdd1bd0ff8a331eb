#include "core/rules/calc/comb.h"

namespace core::rules::calc {

CombShare combShare(std::optional<int> boxLengthMm, std::optional<int> boxHeightMm) {
    constexpr double kDeepLengthMm = 505;
    constexpr double kDeepHeightMm = 244;
    if (!boxLengthMm || !boxHeightMm) return {1, true};
    return {*boxLengthMm / kDeepLengthMm * (*boxHeightMm / kDeepHeightMm), false};
}

CombShare combShareOfArea(double combCm2) { return {combCm2 / kDeepCombCm2, false}; }

} // namespace core::rules::calc
