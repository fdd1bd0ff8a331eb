#pragma once

#include "core/rules/calc/range.h"

namespace core::rules::calc {

/// What the days are counted from.
enum class QueenFrom {
    QueenLost,  ///< the bees rear their own from larvae
    CellSealed, ///< a cell sealed that day
    Emerged,    ///< a virgin that emerged that day
};

/// Days that sources give, from the earliest to the latest; a queen that is not laying by the end of `mayLay` is late.
struct NewQueenDays {
    DayRange emerges;
    DayRange mayLay;
    Day look;              ///< for eggs, without disturbing her before: the last day of mayLay (an assumption)
    Day lookAgain;         ///< at the cappings: nine days later, whether her brood is a worker's
    DayRange firstWorkers; ///< of hers
};

/// Sealed cell to emergence 7 days (MacFawn, Making Splits, Bee Culture) to 8 (swarm-control booklet); queen lost to
/// emergence 11 (from larvae of two days: Fell, Morse, emergency queen cells, abstract) to 17 (MacFawn); emergence to
/// laying 10 to 14 (MacFawn); egg to worker 21.
NewQueenDays newQueenDays(QueenFrom from, Day day);

/// Days from which workers may lay where no queen came of it: two to three weeks (honeybeesuite.com) without open
/// brood, which the last egg leaves as it is sealed.
DayRange layingWorkersFrom(Day queenLost);

} // namespace core::rules::calc
