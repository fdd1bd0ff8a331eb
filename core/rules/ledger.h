#pragma once

#include "core/model/snapshot.h"
#include "core/rules/calc/clustered.h"

#include <array>
#include <optional>
#include <vector>

// The ledger of colonies: what was given up in fall, what winter took, what came back. Three seasons make a year, each
// from its first day to the day before the next begins:
//   fall    from season.fall_start
//   winter  from the day after season.fall_end
//   summer  from the first day of divides (rule 4.13), the spring count, to the next fall count
// In a southern yard six months later. A count is of the colonies living as that day begins.

namespace core::rules {

enum class LedgerSeason { Fall, Winter, Summer };

/// Numbers of colonies; start + in() − out() = end, always.
struct LedgerCount {
    int start = 0;
    int divided = 0; ///< came of a divide
    int begun = 0;   ///< began otherwise: bought, a swarm, new in the book
    int movedIn = 0; ///< carried here from another yard
    int united = 0;
    int shakenOut = 0;
    int dead = 0;
    int destroyed = 0;
    int sold = 0;
    int movedOut = 0; ///< carried to another yard
    int end = 0;

    int in() const { return divided + begun + movedIn; }
    int out() const { return united + shakenOut + dead + destroyed + sold + movedOut; }
    int givenUp() const { return united + shakenOut; }
    int lost() const { return dead + destroyed; }
    LedgerCount& operator+=(const LedgerCount& other);
    friend bool operator==(const LedgerCount&, const LedgerCount&) = default;
};

struct LedgerPeriod {
    LedgerSeason season = LedgerSeason::Fall;
    Day from;          ///< its first day
    Day until;         ///< its last day
    bool over = false; ///< else it is counted up to the snapshot's day
    LedgerCount count;
};

struct LedgerYear {
    std::optional<YardIx> yard; ///< not set: all yards of that half of the earth together
    bool southern = false;
    int year = 0;                      ///< in which its fall begins
    std::vector<LedgerPeriod> periods; ///< fall, winter, summer, as far as they have begun
    /// Dead and destroyed in winter of those at risk, once the winter is over; not set where none was. Of one yard with
    /// the exact interval, of all with that over yards that differ (core/rules/calc/clustered.h).
    std::optional<calc::ClusteredShare> winterLoss;

    const LedgerPeriod* of(LedgerSeason season) const;
};

/// Each yard from the year of its first colony on, in natural order, the years in turn; then all together, where there
/// are two yards or more of one half of the earth.
std::vector<LedgerYear> ledger(const Snapshot& s);

/// Any days of each yard, by YardIx: from the beginning of `from` to that of `next`, which lies after it and at most a
/// day after the snapshot's.
std::vector<LedgerCount> ledgerCounts(const Snapshot& s, Day from, Day next);

} // namespace core::rules
