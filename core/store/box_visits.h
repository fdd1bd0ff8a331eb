#pragma once

#include "core/base/id.h"
#include "core/store/database.h"

#include <optional>
#include <utility>

namespace core::store {

/// The latest visit up to `day` that says in how many brood boxes the colony is: its day and the number.
std::optional<std::pair<Day, int>> latestBoxes(const Database& db, ColonyId colony, Day day);

/// A visit, of a colony in boxes of this kind, that counts more frames of bees or stores in one box than `frames`.
std::optional<VisitId> visitAbove(const Database& db, BoxKindId kind, int frames);

} // namespace core::store
