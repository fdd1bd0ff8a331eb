#pragma once

#include "core/model/rows.h"
#include "core/rules/plan.h"

#include <optional>
#include <span>
#include <vector>

// The divides of a merge day as they are to be done: what the plan has of them, and where the new hives stand.

namespace core::rules {

/// Where a new hive may stand.
struct NewPlace {
    std::optional<StandId> stand; ///< not set: bare ground, a new stand
    QString name;                 ///< the stand's
    MmPoint at;
    bool nearHeld = false; ///< a held colony stands within move.drift_m
};

struct DivideWork {
    Divide divide;                ///< as the plan has it
    std::vector<NewPlace> places; ///< of its parts − 1 new hives
};

/// Of one yard, in the plan's order. `stands`: all of the yard, removed ones too. New hives stand on free stands, those
/// near no held colony first, then by tenths of a metre from their mother, then by name; where none is left, on bare
/// ground a step beside it. No two share a place.
std::vector<DivideWork> divideWork(const Snapshot& s, const Plan& plan, YardIx yard, std::span<const Stand> stands);

/// What to mind where a part stands near its mother: common practice, no source.
Sentences divideDriftWords();
/// What to do, in the order a crew does it.
Sentences divideSteps(DivideQueens queens);

} // namespace core::rules
