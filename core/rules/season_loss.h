#pragma once

#include "core/rules/ledger.h"

#include <span>

namespace core::rules {

/// One winter of a yard, or of all yards of one half of the earth together, out of the ledger of colonies.
struct WinterOf {
    int year = 0; ///< in which its fall begins
    bool southern = false;
    Day from, until; ///< first and last day of the winter
    bool over = false;
    int givenUpBefore = 0; ///< united or shaken out in the fall before it: no losses
    int atStart = 0;       ///< living as the winter begins
    int lost = 0;          ///< dead or destroyed in it
    int givenUp = 0;       ///< united, shaken out, sold or carried away in it: not at risk
    /// Lost of those at risk, once the winter is over; not set where none was at risk.
    std::optional<calc::ClusteredShare> loss;
};

/// Winters in which there was a colony, oldest first, northern yards first. `yard` not set: all yards together.
std::vector<WinterOf> winters(std::span<const LedgerYear> ledger, std::optional<YardIx> yard);

} // namespace core::rules
