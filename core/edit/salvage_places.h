#pragma once

#include "core/edit/salvage.h"
#include "core/store/database.h"

namespace core::edit {

/// Stands that placements point to and that are lost get a row, in a yard named so. Where a hive's places do not join
/// up from its beginning to its end, the days between stand on a stand of its own in that yard.
void mendPlaces(const store::Database& db, SalvageAccount& account);

} // namespace core::edit
