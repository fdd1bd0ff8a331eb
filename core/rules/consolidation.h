#pragma once

#include "core/rules/facts.h"
#include "core/rules/plan.h"
#include "core/rules/reason.h"

#include <optional>
#include <vector>

// Colonies in two boxes that a union takes in one (rule 4.7.7): brought down to one box some days ahead, so that bees,
// brood and stores have settled (common practice, no source).

namespace core::rules {

struct Consolidation {
    ColonyIx colony, partner;
    int order = 0;                ///< of its union
    bool keepUpper = true;        ///< the box with more bees; of two alike the upper, where the brood nest moves to
    Quarters kept, all;           ///< frames of bees in that box, and in both
    std::optional<Quarters> comb; ///< frames of brood and stores, where all of them were noted
    int room = 10;                ///< frames of the box
};

/// Of the yard's unions, in the order of work.
std::vector<Consolidation> consolidations(const Snapshot& s, const std::vector<ColonyFacts>& facts, const Plan& plan,
                                          YardIx yard);

/// How it is done, in whole sentences without the colony's name.
Sentences sentencesOf(const Consolidation& consolidation);

} // namespace core::rules
