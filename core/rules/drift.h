#pragma once

#include "core/model/snapshot.h"
#include "core/rules/hold.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

// Rule 4.17: to which hives the foragers of an emptied stand are likely to drift. That they go to the nearest is common
// practice, no source; how many is not known.

namespace core::rules {

/// A hive near an emptied stand.
struct DriftTo {
    ColonyIx colony;
    MmPoint at;
    bool held = false;
    bool looksAlike = false; ///< its entrance looks less than 45 degrees another way
    friend bool operator==(const DriftTo&, const DriftTo&) = default;
};

/// A hive that was carried at the same time: where it stands then; not set: out of the yard.
struct Moved {
    ColonyIx colony;
    std::optional<MmPoint> to;
};

/// Within move.drift_m, exactly.
bool withinDrift(const Settings& settings, MmPoint a, MmPoint b);

/// The hives of the yard that stand within move.drift_m of the emptied stand on the snapshot's day, the likeliest
/// first: by tenths of a metre; then those that look alike (facing another way keeps drift down: J. B. Free 1958, The
/// drifting of honey-bees); then as the snapshot has them. `holds`: those of the day.
std::vector<DriftTo> driftFrom(const Snapshot& s, const SnapStay& emptied, std::span<const Hold> holds,
                               std::span<const Moved> moved);

/// "B4 (1.2 m)"
QString driftName(const Snapshot& s, ColonyIx colony, MmPoint emptied, MmPoint at);
/// One sentence; held ones are always named. `name`: whose foragers.
QString driftSentence(const Snapshot& s, const QString& name, MmPoint emptied, std::span<const DriftTo> to);

} // namespace core::rules
