#pragma once

#include "core/rules/hold.h"

#include <map>
#include <set>

// Kit that came off a colony is kept apart while the colony stands under a hold: any hold of rule 4.4 but a missing
// brood check. It is judged by its colony, living or ended.

namespace core::rules {

/// Why the kit of a colony is kept apart on the snapshot's day: its gravest hold.
struct KitHold {
    HoldKind kind = HoldKind::AfbSuspected;
    QString because;
};

/// Of those colonies the ones whose kit is to be kept apart. An ended colony is judged as if it lived on, standing only
/// where it stood to its end: only a record lifts what held it. One that began after the day is passed over. Pure.
std::map<ColonyId, KitHold> kitHolds(const Snapshot& s, const std::set<ColonyId>& colonies);

} // namespace core::rules
