#pragma once

#include "core/base/id.h"
#include "core/store/database.h"

#include <set>

namespace core::store {

/// Whether gifts (transfers, lineage) and yards shared at any time, in any number of steps, link the colonies or yards
/// to a record that disease holds begin with. Reads only what is linked, through indexes. True, too, where more than
/// `most` colonies are linked: they are then not followed further.
bool troubleLinked(const Database& db, const std::set<ColonyId>& colonies, const std::set<YardId>& yards, int most);

} // namespace core::store
