#pragma once

#include "core/rules/hold.h"

#include <optional>
#include <span>
#include <vector>

// Rule 4.4.10 as work to be done: whose brood is to be looked at before the fall unions, in the order of a walk.

namespace core::rules {

/// In which order of groups a yard's hives are visited. Those that may carry something come last (common practice, no
/// source), so that hands and tools carry nothing on.
enum class RoundGroup {
    Free,   ///< not held, or for want of a check alone
    Traced, ///< held by an order, or for what it had contact with
    Signs,  ///< efb, or a doubt of its own
    Closed, ///< foulbrood suspected or confirmed: not opened; the inspector says what more
};

struct RoundStop {
    ColonyIx colony;
    RoundGroup group = RoundGroup::Free;
    std::optional<Day> looked;  ///< the latest visit that examined brood, clean or not
    int examined = 0;           ///< brood frames then
    int broodFrames = -1;       ///< then; −1: not recorded
    std::optional<Day> checked; ///< the latest clean check or negative
    std::optional<Day> until;   ///< the last day on which that counts, where nothing else happens; not set: none counts
    const Hold* lacks = nullptr; ///< held for want of a check: of the holds given
    std::optional<Day> masked;   ///< the antibiotic that masks the latest clean check: it counts, but lifts nothing
};

struct RoundYard {
    YardIx yard;
    Day fall; ///< the first day of the fall unions (season.fall_start) from the snapshot's day on; within them that day
    Day from; ///< a check of this day or later counts on `fall`
    std::vector<RoundStop> walk;   ///< none counts on `fall`: by group, each along a short walk from the gate
    std::vector<RoundStop> closed; ///< of those that are not opened
    std::vector<RoundStop> sure;   ///< one counts on `fall`; the first to lapse first

    size_t hives() const { return walk.size() + closed.size() + sure.size(); }
};

/// The first day, from `on` on, that lies within the fall season.
Day fallFrom(const Settings& settings, Day on, bool southern);

/// One a yard that has hives on the snapshot's day. `holds`: as holds() gives them; they are pointed to.
std::vector<RoundYard> broodRound(const Snapshot& s, std::span<const Hold> holds);

} // namespace core::rules
