#pragma once

#include "core/rules/facts.h"
#include "core/rules/season_book.h"

namespace core::rules {

/// Queens of one year of birth.
struct QueensOfYear {
    int born = 0;
    int colonies = 0;
};

/// Living colonies of the yard (of all) by the year their queen was born; all parts together are `living`.
struct QueenAges {
    std::vector<QueensOfYear> years; ///< newest first; years without a queen between them too
    int notRecorded = 0;
    int noQueen = 0; ///< by rule 4.2 none, or laying workers
    int living = 0;
};

/// Where queens of the colony have rows of their own, the one that covers the day says when she was born (none there:
/// not recorded); else the colony's row does. A year after the day's own is not known yet: not recorded. `queens`: in
/// any order.
QueenAges queenAges(const Snapshot& s, std::span<const ColonyFacts> facts, std::span<const Queen> queens,
                    std::optional<YardIx> yard);

} // namespace core::rules
