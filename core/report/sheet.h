#pragma once

#include "core/model/snapshot.h"
#include "core/rules/reason.h"

#include <QString>

#include <optional>
#include <vector>

// What of a yard's merge day is set on paper: the whole worksheet, or one of the shorter sheets by itself.

namespace core::report {

enum class Sheet {
    MergeDay,      ///< the worksheet: all of it
    Walk,          ///< before the day: what is missing for a good plan, with room to write
    Checks,        ///< after it: what is due, with boxes to tick
    ShakeOuts,     ///< the shake-outs alone
    Storing,       ///< the kit that comes free, to be put away in good order
    LayingWorkers, ///< colonies with laying workers: the cautions of a procedure of its own
};

/// What a visit before the merge day is to bring: each is given room to write.
enum class WalkAsk { Count, BroodCheck, Queen, Weight, Stores, BroodFrames };

/// A colony of the walk. Its last figures are taken from the snapshot.
struct WalkRow {
    ColonyIx colony;
    std::vector<WalkAsk> asks;
    /// Why: sentences whose patterns are known in Spanish (worksheet_spanish_reasons.cpp).
    rules::Sentences missing;
};

} // namespace core::report
