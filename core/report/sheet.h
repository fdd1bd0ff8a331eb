#pragma once

// What of a yard's merge day is set on paper: the whole worksheet, or one of the shorter sheets by itself.

namespace core::report {

enum class Sheet {
    MergeDay,      ///< the worksheet: all of it
    Walk,          ///< before the day: what is missing for a good plan, with room to write
    Checks,        ///< after it: what is due, with boxes to tick
    ShakeOuts,     ///< the shake-outs alone
    Storing,       ///< the kit that comes free, to be put away in good order
    LayingWorkers, ///< colonies with laying workers: the cautions of a procedure of its own
};

} // namespace core::report
