#pragma once

#include "core/model/snapshot.h"
#include "core/store/database.h"

namespace core::store {

/// How much of the brood checks is read. Needed: those that a hold, a caution or its reason can ask for on that day
/// (see check_reach.h). All: for tests of that.
enum class Checks { Needed, All };

/// What is in force on the day (rule 4.0), read in one state of the book through its partial indexes: its cost grows
/// with the colonies, transfers and signs, not with the visits. Throws Error(Book).
Snapshot readSnapshot(const Database& db, Day on, Checks checks = Checks::Needed);

/// A part of it, read quickly: the hives that stand in one yard on the day, with all that their facts rest on. Others
/// are in it by chance, and no hold can be judged from it: transfers, results, treatments, signs and checks are left
/// out.
Snapshot readYardGlance(const Database& db, YardId yard, Day on);

/// All that the holds of any day rest on, as known on the last day of the book: without `latest`.
Snapshot readForHolds(const Database& db);

} // namespace core::store
