#pragma once

#include "core/rules/hold_evidence.h"
#include "core/rules/hold_spread.h"

namespace core::rules {

/// Why a colony is held for a disease that follows the brood: its latest event, and the gift where it is one.
struct EventFact {
    ColonyIx colony;
    Day event;
    std::optional<Gift> gift; ///< received that day from a colony that had it or was found with it soon after
    std::optional<Day> found; ///< of the giver: its own sign or finding after the gift, where it was not held yet
};

/// Rule 4.4.11: the living colonies with efb.
void traceEfb(const Evidence& e, Spread& spread, std::vector<EventFact>& facts);

} // namespace core::rules
