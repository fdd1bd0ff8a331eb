#pragma once

#include "core/model/rows.h"
#include "core/model/settings.h"
#include "core/rules/calc/range.h"

#include <optional>
#include <span>
#include <vector>

// What a colony's visits say over its whole life, by the definitions of the rules; what a rule would take for too old
// or no longer valid on some day is history here, and shown. Visits of one colony, by day.

namespace core::rules {

/// Brood boxes on the day of each visit (rule 4.0). `lineage`: of the colony, on either side.
std::vector<int> boxesOverTime(const Colony& colony, std::span<const Visit> visits, std::span<const Lineage> lineage);

/// Frames of bees by rule 4.1. All of a visit that counts one of two boxes: not set.
struct StrengthThen {
    Day day;
    int boxes = 1;
    std::optional<Quarters> all, lower, upper;
};
/// One a visit with any count. `boxes`: one a visit.
std::vector<StrengthThen> strengthOverTime(std::span<const Visit> visits, std::span<const int> boxes,
                                           const Settings& settings);

struct StoresThen {
    Day day;
    std::optional<Quarters> lower, upper;
    std::optional<Quarters> all; ///< not set where one of two boxes has no figure
};
std::vector<StoresThen> storesOverTime(std::span<const Visit> visits, std::span<const int> boxes);

struct WeightThen {
    Day day;
    Decagrams gross;
    int supers = 0; ///< above 0: no rule goes by this weight (rule 4.0)
};
std::vector<WeightThen> weightOverTime(std::span<const Visit> visits);

struct MitesThen {
    Day day;
    int mites = 0;
    int bees = 1;
    double perHundred = 0;
    std::optional<calc::Range> interval; ///< exact, 95 %; none for more mites than bees
};
std::vector<MitesThen> mitesOverTime(std::span<const Visit> visits);

struct QueenThen {
    Day day;
    QueenSeen seen = QueenSeen::Unknown;
};
std::vector<QueenThen> queenOverTime(std::span<const Visit> visits);

} // namespace core::rules
