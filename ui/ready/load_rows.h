#pragma once

#include "core/rules/kit_piles.h"
#include "ui/board/board_rows.h"

#include <vector>

namespace ui::ready {

/// What to load for the day, a row a thing: how many, what of it is usable here and in the store room, and what is
/// short. Only usable kit is offered; what is kept apart is named and not counted. Then what comes free.
void addLoad(const desk::Reading& reading, core::YardIx yard, const std::vector<core::rules::KitPile>& piles,
             std::vector<board::BoardRow>& rows);

} // namespace ui::ready
