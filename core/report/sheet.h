#pragma once

// What of a yard is set on paper: of its merge day the whole worksheet or one of the shorter sheets by itself; or what
// visits are written on.

namespace core::report {

enum class Sheet {
    MergeDay,      ///< the worksheet: all of it
    Walk,          ///< before the day: what is missing for a good plan, with room to write
    Checks,        ///< after it: what is due, with boxes to tick
    ShakeOuts,     ///< the shake-outs alone
    Storing,       ///< the kit that comes free, to be put away in good order
    LayingWorkers, ///< colonies with laying workers: the cautions of a procedure of its own
    Tally,         ///< blank, a row a colony in walking order, to write a day's visits on
    Card,          ///< the same of one colony, with its last visits
};
constexpr int kSheets = 8;

/// Sheets for visits, which no plan is printed on.
constexpr bool forVisits(Sheet sheet) { return sheet == Sheet::Tally || sheet == Sheet::Card; }

} // namespace core::report
