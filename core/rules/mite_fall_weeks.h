#pragma once

#include "core/rules/mite_fall.h"
#include "core/rules/season_book.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace core::rules {

enum class FallKind { Natural, WhileTreated };

/// The boards counted in one week, of each colony the latest.
struct FallWeek {
    calc::DayRange days;
    int colonies = 0;
    double mean = 0; ///< mites a day, of the colonies
    double highest = 0;
    ColonyIx highestOf;
    int above = 0; ///< natural fall above the threshold of its own day and yard; while treated never
    /// Of the latest count; not set where none holds then, or where yards of both halves of the earth were counted.
    std::optional<Millionths> threshold;
    std::vector<ColonyIx> over; ///< those above
};

/// Weeks with counts of that kind, in order. `treated`: days of treatments against mites (treatedByColony).
std::vector<FallWeek> fallByWeek(const SeasonBook& book, std::span<const MiteFall> falls,
                                 const std::map<ColonyId, std::vector<TreatedDays>>& treated, FallKind kind);

} // namespace core::rules
