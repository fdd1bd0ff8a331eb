#pragma once

#include "core/rules/hold_evidence.h"
#include "core/rules/hold_spread.h"

namespace core::rules {

/// Why a colony is held by one order in force.
struct OrderFact {
    ColonyIx colony;
    const SnapResult* order = nullptr;
    std::optional<Day> stood; ///< of an order on a yard: the first day on which its hive stood there
    std::vector<Gift> chain;  ///< back from the colony to one that is named or stood there; empty where it is itself
};

/// Row `order` of rule 4.4: adds a fact for each living colony and each order in force.
void traceOrders(const Evidence& e, Spread& spread, std::vector<OrderFact>& facts);

} // namespace core::rules
