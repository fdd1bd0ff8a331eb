#pragma once

#include "core/rules/hold.h"

#include <functional>
#include <optional>
#include <vector>

namespace core::rules {

/// What ended a hold, by the records of its first free day, in the order in which they are looked for.
enum class LiftedBy {
    Release,  ///< a release that names the colony
    OfYard,   ///< a release of a yard where its hive stood that day
    Negative, ///< a negative of its own
    Check,    ///< a clean brood check of its own
    Ended,    ///< nothing was lifted: the colony ended
    Elsewhere ///< none of its own: a record of another colony (its source's answer, say), or a count of days ran out
};

/// A hold that stands no more. Its days are those of the records, as the book tells them now.
struct LiftedHold {
    ColonyId colony;
    HoldKind kind = HoldKind::AfbSuspected;
    Day from;
    Day to;              ///< its last day
    bool before = false; ///< it stood on the first day that was asked for: it began then or earlier
    LiftedBy by = LiftedBy::Elsewhere;
    std::optional<size_t> result; ///< of Release, OfYard and Negative: in Snapshot::results of the whole book
    friend bool operator==(const LiftedHold&, const LiftedHold&) = default;
};

/// Holds of rule 4.4 that ended between two days, but for missing brood checks, which come and go each year; the latest
/// first. Judged on both days, every `apart` days between them, on each day of a result or sign and on the day before
/// it; where two of these differ, day by day until the change is found. A hold that comes and goes between two such
/// days is not seen, so nothing may rest on this. `whole`: read as Session::snapshotForHolds() does. `stop`: asked
/// before each day; true ends it at once, with nothing.
std::vector<LiftedHold> liftedHolds(const Snapshot& whole, Day first, Day last, int apart,
                                    const std::function<bool()>& stop = {});

} // namespace core::rules
