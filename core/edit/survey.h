#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

#include <vector>

// The drawing of a yard put right: where its stands are, how its hives are turned, its gate. No hive is carried by any
// of these, so no placement begins or ends, and no rule reads them: distances and holds are of yards, not of stands.
// Each call is one change of many parts. Throws Error(BadData) with one sentence that names what stands against it.

namespace core::edit {

struct StandMove {
    StandId stand;
    MmPoint to;
};
/// Stands of that yard, none taken off the plan, each named once. Those that end nearer than kStandApartMm to another,
/// and nearer than they were, are refused. Empty change: all are there already.
ChangeSet moveStands(const EditContext& c, YardId yard, const std::vector<StandMove>& moves);

struct HiveTurn {
    ColonyId colony;
    int headingDeg; ///< 0..359, clockwise from north
};
/// How hives that stand in that yard are turned now.
ChangeSet turnHives(const EditContext& c, YardId yard, const std::vector<HiveTurn>& turns);

ChangeSet putGate(const EditContext& c, YardId yard, MmPoint at);

// Fixed things.

/// Its id is given. A name is as a yard's, or empty.
ChangeSet addFixedThing(const EditContext& c, const FixedThing& thing);
/// `now.id` names it; its yard stays.
ChangeSet changeFixedThing(const EditContext& c, const FixedThing& now);
ChangeSet takeBackFixedThing(const EditContext& c, FixedThingId id);

/// Refuses where a stand of these ends nearer to another than kStandApartMm, and nearer than `was` had them. `c`: the
/// book with the stands where they shall be.
void needApart(const EditContext& c, YardId yard, const std::vector<Stand>& was);

} // namespace core::edit
