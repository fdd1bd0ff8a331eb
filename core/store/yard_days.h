#pragma once

#include "core/model/recorded_day.h"
#include "core/store/database.h"

#include <vector>

// What a yard's days hold, for the time line under its plan. All throw Error(Book).

namespace core::store {

/// By day, then kind; each day and kind once. Cost: the yard's own records.
std::vector<RecordedDay> recordedDays(const Database& db, YardId yard);
/// Of the yard's stands that were ever used.
std::vector<StandUse> standUses(const Database& db, YardId yard);

} // namespace core::store
