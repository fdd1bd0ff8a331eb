#pragma once

#include "core/edit/edits.h"
#include "ui/desk/desk.h"
#include "ui/plan/drag_machine.h"

#include <vector>

namespace ui::hand {

/// Where hives come to stand in another yard until they are put in their places there: one on the first empty stand
/// that nobody stands next to, several (or where there is none) beside the rows, as far from one another as they stood.
std::vector<core::edit::CarryTo> placesIn(const desk::Desk& desk, core::YardId yard,
                                          const std::vector<plan::OnWay>& hives);

} // namespace ui::hand
