#include "core/rules/feed_given.h"

#include "core/base/quantity.h"
#include "core/rules/season_feed.h"

#include <algorithm>

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

ColonyFed fedBetween(std::span<const Feeding> feedings, Day from, Day until) {
    ColonyFed fed;
    for (const Feeding& f : feedings) {
        if (f.day < from || f.day > until) continue;
        ++fed.feedings;
        fed.last = std::max(fed.last.value_or(f.day), f.day);
        fed.amounts[f.what].millilitres += f.volume ? f.volume->value : 0;
        fed.amounts[f.what].decagrams += f.weight ? f.weight->value : 0;
        if (const auto sugar = sugarIn(f))
            fed.sugarKg += *sugar;
        else
            ++fed.sugarUnknown;
    }
    return fed;
}

} // namespace core::rules
