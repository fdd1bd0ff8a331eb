#pragma once

#include "ui/chart/chart.h"
#include "ui/life/colony_life.h"

namespace ui::life {

inline constexpr size_t kColonyCharts = 5;

/// Strength, stores, weight, mites and queen over the colony's life, all on the same days, so that they stand one under
/// the other. Holds, unions, shake-outs and divides are marked on each.
std::vector<chart::Chart> colonyCharts(const ColonyLife& life);

} // namespace ui::life
