#pragma once

#include "core/model/snapshot.h"

#include <optional>
#include <vector>

namespace core::rules {

/// By living colony: the latest day on which bees or comb went from it or to it, or another was shaken out into it.
std::vector<std::optional<Day>> lastMoved(const Snapshot& s);

} // namespace core::rules
