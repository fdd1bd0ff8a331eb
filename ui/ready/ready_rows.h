#pragma once

#include "core/rules/kit_piles.h"
#include "core/rules/missing.h"
#include "ui/board/board_rows.h"

#include <QCoreApplication>

#include <vector>

namespace ui::ready {

/// Translation context of the step.
struct Ready {
    Q_DECLARE_TR_FUNCTIONS(Ready)
};

/// What is done before a merge day, as rows of a board.
struct ReadyRows {
    std::vector<board::BoardRow> rows;
    std::vector<core::rules::ColonyMissing> missing; ///< in walking order, as the rows
    QString summary;                                 ///< "3 of 24 hives lack something"
};

/// What is missing for a good plan, what comes down to one box some days ahead, and what to load.
ReadyRows readyRows(const desk::Reading& reading, core::YardIx yard, const std::vector<core::rules::KitPile>& piles);

} // namespace ui::ready
