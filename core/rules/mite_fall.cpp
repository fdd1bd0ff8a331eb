#include "core/rules/mite_fall.h"

#include "core/rules/calc/mites.h"
#include "core/rules/season.h"

#include <algorithm>

namespace core::rules {

double mitesADay(const MiteFall& fall) { return calc::mitesADay(fall.mites, fall.days); }

Day boardSince(const MiteFall& fall) { return fall.day - fall.days; }

std::optional<Millionths> dropThreshold(const Settings& settings, Day day, bool southern) {
    constexpr int kFirstOfSummer = 7;
    constexpr int kFirstLate = 11;
    const int month = northernMonth(day, southern);
    if (month < kFirstOfSummer) return std::nullopt;
    return month < kFirstLate ? settings.dropSummer : settings.dropLate;
}

bool above(Millionths threshold, const MiteFall& fall) {
    return qint64(fall.mites) * 1'000'000 > threshold.value * fall.days;
}

bool againstMites(const Treatment& t) { return !t.antibiotic; }

TreatedDays treatedDays(const Treatment& t, ColonyId colony, std::span<const StripsOut> out) {
    const auto taken = std::ranges::find_if(
        out, [&](const StripsOut& o) { return o.treatment == t.id && o.colony == colony && o.day >= t.day; });
    return {t.day, taken != out.end() ? taken->day : t.day + t.days.value_or(0)};
}

bool whileTreated(const MiteFall& fall, std::span<const TreatedDays> ofColony) {
    return std::ranges::any_of(ofColony,
                               [&](const TreatedDays& t) { return t.first < fall.day && boardSince(fall) <= t.last; });
}

} // namespace core::rules
