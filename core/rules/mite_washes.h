#pragma once

#include "core/rules/facts.h"
#include "core/rules/season_mites.h"

#include <optional>
#include <span>
#include <vector>

// What the latest washes say of a yard on a day: mites per 100 bees, by rule 4.5.

namespace core::rules {

/// The latest valid wash of a living colony.
struct LatestWash {
    ColonyIx colony;
    Day day;
    calc::MiteSample counted;
    std::optional<calc::Range> interval; ///< nullopt: more mites than bees
    Millionths threshold;                ///< in force on the snapshot's day where it stands
    bool above = false;                  ///< exactly; as rule 4.5 cautions
};

struct LatestWashes {
    std::vector<LatestWash> washes; ///< not older than rule 4.5 says; in the snapshot's order
    int living = 0;
    int old = 0;                      ///< living colonies whose latest wash is older
    int never = 0;                    ///< without a valid wash
    std::optional<MiteWeek> estimate; ///< of these washes, judged by the snapshot's day; nullopt without one
};

/// `facts`: of the same snapshot. `yard` not set: all.
LatestWashes latestWashes(const Snapshot& s, std::span<const ColonyFacts> facts, std::optional<YardIx> yard);

} // namespace core::rules
