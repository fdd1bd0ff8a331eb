#pragma once

#include "ui/plan/scene.h"

#include <optional>
#include <span>

namespace ui::plan {

/// To an empty stand within `reach` millimetres, else to the row or column of a hive within it, else to the next tenth
/// of a metre, each way by itself.
core::MmPoint snapped(const Scene& scene, core::MmPoint at, std::span<const core::ColonyId> carried, int reach);

/// The nearest other hive whose body a hive set down at `at` would stand in: closer than it is wide, or closer than
/// half of what is drawn of it.
std::optional<core::ColonyId> standingAt(const Scene& scene, core::MmPoint at, std::span<const core::ColonyId> carried,
                                         double magnified);

/// The hive after (or before) the chosen one in the scene's order; nullopt past the last.
std::optional<size_t> neighbourOf(const Scene& scene, std::optional<size_t> chosen, bool forward);

} // namespace ui::plan
