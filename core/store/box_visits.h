#pragma once

#include "core/base/id.h"
#include "core/store/database.h"

#include <optional>
#include <utility>

namespace core::store {

/// The latest visit up to `day` that says in how many brood boxes the colony is: its day and the number.
std::optional<std::pair<Day, int>> latestBoxes(const Database& db, ColonyId colony, Day day);

} // namespace core::store
