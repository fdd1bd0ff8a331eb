#pragma once

#include "core/base/day.h"

namespace core::rules::calc {

/// Days from the egg. Source: life-stage tables (3 + 6 + 12, 3 + 5.5 + 7.5, 3 + 6.5 + 14.5 days: secondary); a queen
/// cell sealed on day 8: swarm-control booklet.
struct CasteDays {
    double hatches = 0;
    double sealed = 0;
    double emerges = 0;
};
inline constexpr CasteDays kWorkerDays{3, 9, 21};
inline constexpr CasteDays kQueenDays{3, 8, 16};
inline constexpr CasteDays kDroneDays{3, 9.5, 24};

struct BroodDays {
    Day hatches;
    Day sealed; ///< half days count to the next: by then it is sealed
    Day emerges;
};

/// Of an egg laid on that day.
BroodDays broodDays(Day laid, const CasteDays& caste);

/// The first day on which all worker and drone brood has emerged, where no egg was laid after that day.
Day broodless(Day lastEggs);

} // namespace core::rules::calc
