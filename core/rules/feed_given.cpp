#include "core/rules/feed_given.h"

#include "core/base/quantity.h"
#include "core/rules/season_feed.h"

namespace core::rules {

QString mixText(const calc::Mix& mix) {
    constexpr int kDecimals = 3;
    const auto part = [](double kg) { return decimalText(qRound64(kg * 1000), kDecimals); };
    return part(mix.sugarKg) + u':' + part(mix.waterKg);
}

std::optional<double> storesOf(const Feeding& f) {
    if (f.what == FeedKind::Honey) return f.weight ? std::optional(f.weight->kilograms()) : std::nullopt;
    const auto sugar = sugarIn(f);
    return sugar ? std::optional(*sugar / calc::kSugarInStores) : std::nullopt;
}

} // namespace core::rules
