#pragma once

#include "core/rules/brood_round.h"
#include "ui/board/board_rows.h"

#include <optional>

namespace ui::health {

/// The round of one yard as rows: those to check, those that stay closed, those whose check still counts.
std::vector<board::BoardRow> roundRows(const desk::Reading& reading, const core::rules::RoundYard& round);

/// How many have no check that will still count at the fall unions, and how many none that counts on the day.
QString roundSummary(const desk::Reading& reading, const core::rules::RoundYard& round);
/// From which day on a check counts at the fall unions.
QString roundFrom(const desk::Reading& reading, const core::rules::RoundYard& round);

} // namespace ui::health
