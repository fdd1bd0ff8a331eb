#pragma once

#include "core/model/rows.h"
#include "core/rules/calc/syrup.h"

#include <QString>

#include <optional>

// Feed that was given (its sugar: sugarIn(), season_feed.h). No rule of a plan reads it; it is shown beside the feed
// that rule 4.12 asks for.

namespace core::rules {

/// As the book keeps it: "3:2", "1.5:1".
QString mixText(const calc::Mix& mix);

/// Kilograms of stores that its sugar makes (calc::kSugarInStores: an assumption); of honey its own weight. nullopt
/// where the sugar in it is not known.
std::optional<double> storesOf(const Feeding& feeding);

} // namespace core::rules
