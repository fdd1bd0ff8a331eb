#pragma once

#include "core/edit/change_set.h"
#include "core/store/database.h"

namespace core::edit {

/// The change, not yet written, leaves each hive in the same yards on the same days: a carry within a yard, or one
/// taken back. Holds know of yards, not of stands.
bool sameYards(const store::Database& db, const ChangeSet& change);

} // namespace core::edit
