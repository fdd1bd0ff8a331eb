#pragma once

#include "ui/desk/reading.h"

#include <vector>

namespace ui::pick {

/// Along a short walk from the yard's gate from hive to hive and back, as the order of work is found (rule 4.10).
/// Those that do not stand in the yard are passed over.
std::vector<core::ColonyId> walkingOrder(const desk::Reading& reading, core::YardIx yard,
                                         const std::vector<core::ColonyId>& colonies);
/// All that stand in the yard on the snapshot's day (Session::yardGlance will do).
std::vector<core::ColonyId> walkingOrder(const core::Snapshot& snapshot, core::YardIx yard);

} // namespace ui::pick
