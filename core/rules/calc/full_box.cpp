#include "core/rules/calc/full_box.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <iterator>

namespace core::rules::calc {

namespace {

struct FullBox {
    int heightMm;
    int lowLb;
    int highLb;
};
constexpr FullBox kTenFrames[] = {{244, 80, 85}, {168, 50, 60}, {144, 40, 55}};

} // namespace

Range fullBoxKg(int frames, std::optional<int> lengthMm, int heightMm) {
    constexpr double kPound = 0.45359237;
    constexpr int kLengthMm = 505;
    const auto off = [&](const FullBox& box) { return std::abs(box.heightMm - heightMm); };
    const FullBox& nearest = *std::min_element(std::begin(kTenFrames), std::end(kTenFrames),
                                               [&](const FullBox& a, const FullBox& b) { return off(a) < off(b); });
    const double share = frames / 10.0 * lengthMm.value_or(kLengthMm) / kLengthMm * heightMm / nearest.heightMm;
    return {share * nearest.lowLb * kPound, share * nearest.highLb * kPound};
}

Range broodBoxKg(Decagrams gross, int boxes, const Settings& settings) {
    const double hive = std::max(0.0, gross.kilograms() - settings.floorLidKg.real());
    if (boxes <= 1) return {hive, hive};
    const double empty = std::min(settings.boxKg.real(), hive);
    return {std::min(empty, hive - empty), std::max(empty, hive - empty)};
}

} // namespace core::rules::calc
