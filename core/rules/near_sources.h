#pragma once

#include "core/rules/hold_evidence.h"

#include <vector>

// Who stands near a foulbrood source of today (rule 4.4.6, not a past one): yards whose bees may rob it, hives that its
// bees may drift to. The sources are those of near-afb (rule 4.5). Shown, never barring: what bars are the holds.

namespace core::rules {

/// A yard with hives within afb.near_m or afb.rob_m of the source's.
struct NearYard {
    YardIx yard;
    int hives = 0; ///< that live there
    double metres = 0;
    bool near = false;    ///< at most afb.near_m
    bool robbing = false; ///< at most afb.rob_m
};

/// A hive of the source's own yard within move.drift_m of its stand.
struct NearHive {
    ColonyIx colony;
    MmPoint at;
};

struct NearSource {
    ColonyIx source;
    bool confirmed = false; ///< by a positive; else by a sign alone
    Day last;
    YardIx yard; ///< where it stands, or stood last
    MmPoint at;
    std::vector<NearYard> yards; ///< the nearest first
    /// Other yards with hives whose distance is not known: the coordinates of it, or of the source's yard, are not
    /// recorded. Not near, but not far either.
    std::vector<YardIx> unknown;
    std::vector<NearHive> hives; ///< the nearest first
};

/// By yard of the source, then colony.
std::vector<NearSource> nearSources(const Evidence& evidence);

} // namespace core::rules
