#pragma once

#include "core/model/snapshot.h"
#include "core/rules/plan.h"

#include <optional>
#include <vector>

namespace core::rules {

enum class NoStrength { NoCount, NoBees, CountOld };

/// What rules 4.0 to 4.2 say of one living colony on the day; window, card and worksheet show it.
struct ColonyFacts {
    ColonyIx colony;
    YardIx yard;
    std::optional<Quarters> strength; ///< not set: see noStrength
    NoStrength noStrength = NoStrength::NoCount;
    std::optional<Quarters> lastCount; ///< counted, even where it is too old to use
    std::optional<Day> counted;
    std::optional<StrengthClass> strengthClass; ///< with a strength
    QueenSeen queen = QueenSeen::Unknown;       ///< by 4.2
    QueenSeen queenNoted = QueenSeen::Unknown;  ///< the latest that counts, however old
    std::optional<Day> queenDay;                ///< when that was noted
    bool lacksQueen = false;
    bool layingWorkers = false;
    int boxes = 1;
    std::optional<Quarters> lowerBees, upperBees; ///< of the valid count, by box
    std::optional<Decagrams> gross;               ///< valid weight
    std::optional<Day> weighed, storesDay;        ///< of what is valid
    std::optional<Quarters> stores, upperStores;  ///< valid stores
    std::optional<int> broodFrames;               ///< latest valid, any age
    std::optional<Day> broodDay;
    std::optional<SnapMites> mites; ///< latest valid sample, any age
    std::optional<Day> freshStart;  ///< what was seen before or on it is no longer valid
};

/// One a living colony, in the snapshot's order.
std::vector<ColonyFacts> colonyFacts(const Snapshot& s);

} // namespace core::rules
