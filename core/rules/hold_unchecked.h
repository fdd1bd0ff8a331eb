#pragma once

#include "core/rules/hold_evidence.h"

namespace core::rules {

/// Why a colony has no check that counts on the snapshot's day.
struct UncheckedFact {
    ColonyIx colony;
    Day from;                   ///< a clean check or a negative dated from here on would count
    Day maxAge;                 ///< the first day that `check.max_age_days` lets count
    Day season;                 ///< the first day that season or grace let count
    Day seasonStart;            ///< when the season began
    std::optional<Gift> gift;   ///< the latest bees or comb from an unchecked colony
    std::optional<Day> spoiled; ///< the latest sign or positive
};

/// Rule 4.4.10: adds a fact for each living colony that is unchecked.
void traceUnchecked(const Evidence& e, std::vector<UncheckedFact>& facts);

} // namespace core::rules
