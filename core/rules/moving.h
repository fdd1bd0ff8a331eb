#pragma once

#include "core/model/snapshot.h"

#include <QString>

#include <optional>

// Rule 4.16: a hive carried in the flying season, farther than a step and not far. Custom, and no bar.

namespace core::rules {

/// From season.start to season.fall_end, both included, moved by the half year in a southern yard.
bool inFlyingSeason(const Snapshot& s, YardIx yard);

struct MovingCaution {
    bool distanceKnown = true; ///< false: to a yard that lies nobody knows how far away
    QString because;           ///< one sentence
};
/// What its foragers do where the living colony is set down at `at` of yard `to` on the snapshot's day; nullopt:
/// nothing to mind. Measured from where it stood before the day.
std::optional<MovingCaution> movingCaution(const Snapshot& s, ColonyIx colony, YardIx to, MmPoint at);

/// Where its foragers know it: before the carry of the snapshot's day, where there was one. nullptr: it stands nowhere.
const SnapStay* knownPlace(const Snapshot& s, ColonyIx colony);

} // namespace core::rules
