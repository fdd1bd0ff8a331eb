#pragma once

#include "core/model/rows.h"
#include "core/rules/calc/syrup.h"

#include <QString>

#include <map>
#include <optional>
#include <span>

// Feed that was given to one colony (its sugar: sugarIn(), season_feed.h). No rule of a plan reads it; it is shown
// beside the feed that rule 4.12 asks for.

namespace core::rules {

/// As the book keeps it: "3:2", "1.5:1".
QString mixText(const calc::Mix& mix);

/// Kilograms of stores that its sugar makes (calc::kSugarInStores: an assumption); of honey its own weight. nullopt
/// where the sugar in it is not known.
std::optional<double> storesOf(const Feeding& feeding);

/// What one colony was given from a day to another, both included.
struct ColonyFed {
    struct Amount {
        qint64 millilitres = 0; ///< of what was measured by volume
        qint64 decagrams = 0;   ///< of what was weighed
    };
    std::map<FeedKind, Amount> amounts;
    double sugarKg = 0;
    int sugarUnknown = 0; ///< feedings whose sugar is not known: not in sugarKg
    int feedings = 0;
    std::optional<Day> last;
};
ColonyFed fedBetween(std::span<const Feeding> ofOneColony, Day from, Day until);

} // namespace core::rules
