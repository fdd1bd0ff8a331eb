#pragma once

#include "core/model/rows.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace demo {

/// One hive as its queens and its feed are invented: what is told of it elsewhere.
struct Kept {
    core::ColonyId colony;
    core::ColonyId neighbour; ///< raised queens come of it, where it lived by then; the colony's own id: of none
    core::Day neighbourSince;
    core::Day since;
    std::optional<core::Day> ended;
    std::optional<int> born;          ///< year of the last queen
    std::optional<core::Day> missing; ///< from that day on nobody has seen her
    bool board = false;               ///< boards lie under it
    bool treated = false;             ///< with strips, from 10 August 2026 on
    bool light = false;               ///< fed on the day after the count of September 2026, too
    int years = 2;                    ///< of visits; the last is 2026
    std::uint64_t seed = 1;
};

/// One after the other from its first day on; the last was born in `born`. The same for the same hive.
std::vector<core::Queen> queensOf(const Kept& hive);
/// By day: syrup 1:1 in spring for some, 3:2 in the fall for those that are light, fondant in winter for few.
std::vector<core::Feeding> feedingsOf(const Kept& hive);
/// By day: mites on a board in July, in the fall, and while strips are in the hive.
std::vector<core::MiteFall> miteFallsOf(const Kept& hive);

} // namespace demo
