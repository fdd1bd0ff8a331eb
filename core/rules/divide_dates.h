#pragma once

#include "core/model/words.h"
#include "core/rules/calc/range.h"
#include "core/rules/reason.h"

#include <vector>

// When a divide's new colonies are to be looked at. Days come from core/rules/calc/new_queen.h and its sources; those
// of bought queens are common practice, no source.

namespace core::rules {

enum class DivideCheckKind {
    CellEmerged, ///< the queen cell is open at its tip
    QueenOut,    ///< the bought queen is out of her cage
    Mated,       ///< nobody looks: until then she is left alone
    Eggs,        ///< she lays
    WorkerBrood, ///< her brood is capped, and a worker's
};

struct DivideDate {
    DivideCheckKind what = DivideCheckKind::Eggs;
    calc::DayRange range;    ///< from the earliest to the latest
    Day look;                ///< the day to look; of Mated the first on which she may lay
    const char* source = ""; ///< English; in Spanish by core/report/worksheet_spanish_spring.cpp
};

/// In the order of their days. Cells are taken to be sealed on that day at the latest.
std::vector<DivideDate> divideDates(DivideQueens queens, Day divided);

/// "Look whether the cell has opened at its tip", without its day.
const char* divideCheckWords(DivideCheckKind what);
/// "look whether …; between 2026-05-30 and 2026-06-01 (source).": what to do on the day of the look.
Sentence sentenceOf(const DivideDate& date);

} // namespace core::rules
