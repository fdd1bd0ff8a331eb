#pragma once

#include "core/rules/plan.h"
#include "core/rules/season_book.h"

#include <array>

namespace core::rules {

/// Strength of a yard at the end of a week, by rules 4.0 and 4.1 as they stand on that day.
struct StrengthWeek {
    calc::DayRange days;
    int living = 0;  ///< colonies; the sum of the four below
    int counted = 0; ///< with a strength: their latest valid count counts on the last day
    int noBees = 0;  ///< counted, and no bees found
    int countOld = 0;
    int noCount = 0;
    Quarters sum;                 ///< frames of bees of those counted
    std::array<int, 4> ofClass{}; ///< those counted, by StrengthClass

    /// Frames of bees of a colony counted; nullopt where none is.
    std::optional<double> mean() const;
};

/// One a week, in order. `visits` with counts and with `boxes` are what it needs.
std::vector<StrengthWeek> strengthByWeek(const SeasonBook& book);

} // namespace core::rules
