#pragma once

#include "core/rules/day_view.h"
#include "core/rules/reason.h"

#include <optional>
#include <vector>

// What a keeper still has to look at before the plan of a day is worth printing: figures that rules 4.1 to 4.13 ask for
// and do not have, or no longer believe.

namespace core::rules {

enum class MissingKind {
    Count,               ///< none, or of one box of two
    CountOld,            ///< 4.1
    NoBees,              ///< the last count found none: does it live?
    CountBeforeTransfer, ///< 4.5: bees or comb came or went since
    BroodCheck,          ///< 4.4.10: held for that alone
    Queen,               ///< 4.2: unknown, seen too long ago, or a virgin
    BroodFrames,         ///< 4.13: while divides are proposed, of one with bees for two
    Room,                ///< 4.7.7: two boxes, and whether all fits into one is not known
    Weight,              ///< 4.12: none, too old, or with honey boxes on
    Signs                ///< 4.5: seen at the latest visit; look again
};
constexpr int kMissingKinds = 10;
QString missingWord(MissingKind kind); ///< "count-old": stable, never translated

struct Missing {
    MissingKind kind = MissingKind::Count;
    std::optional<Day> last; ///< when it was noted last; not set: never, or not since a fresh start
    Reason why = {};
};

struct ColonyMissing {
    ColonyIx colony;
    std::vector<Missing> what; ///< in the order of the kinds, each once; never empty
};

/// What is missing for a plan of the yard on the view's day, in walking order (a short walk from the gate). Outside
/// the seasons of 4.3 and 4.13 nothing is planned and nothing missing. Of a colony that takes no part whatever is
/// noted (held for more than its brood check, or with laying workers) only the weight is asked, where 4.12 reckons
/// with it.
std::vector<ColonyMissing> missingIn(const DayView& view, YardIx yard);

/// Whether anything is planned in that yard on the day: a season of 4.3 or 4.13.
bool planned(const DayView& view, YardIx yard);

/// What is missing, in one short sentence without the colony's name.
Sentence sentenceOf(const Snapshot& s, const Missing& missing);

} // namespace core::rules
