#pragma once

#include "core/rules/calc/mites.h"

#include <optional>
#include <span>

namespace core::rules::calc {

/// One colony, washed twice.
struct WashedTwice {
    MiteSample before;
    MiteSample after;
};

enum class Change { Fell, Rose, Open };

struct MiteChange {
    int colonies = 0;
    YardMites before; ///< of the same colonies; of a single one its interval is the wash's own
    YardMites after;
    double change = 0; ///< after less before, mites per 100 bees, the mean of the colonies
    /// Of the change; nullopt where a wash has more mites than bees. 95 %: the wider one of Student's t over the
    /// colonies' own changes (two or more; Student, The probable error of a mean, Biometrika 6, 1908) and the exact
    /// intervals of all their bees before and after, squared and added (Newcombe, Interval estimation for the
    /// difference between independent proportions, Statistics in Medicine 17, 1998, from memory; with exact intervals
    /// in place of Wilson's: own choice, an assumption).
    std::optional<Range> interval;
    /// Open where the interval holds 0, or of a single colony where the intervals of its two washes meet. A change
    /// says nothing of its cause.
    Change said = Change::Open;
};

/// nullopt without a colony.
std::optional<MiteChange> mitesChange(std::span<const WashedTwice> colonies);

} // namespace core::rules::calc
