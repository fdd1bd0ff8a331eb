#pragma once

#include "core/base/quantity.h"
#include "core/rules/calc/comb.h"
#include "core/rules/calc/range.h"

namespace core::rules::calc {

/// Worker cells on both sides of a Langstroth deep frame full of brood, the range between sources: 61,000 cells in a
/// box of ten (BBKA module notes, Hives frames and ratios, 2015), and 6688 a frame (Aurell et al. 2024, data of an
/// autumn trial, J. Insect Science: worker cells / frames).
inline constexpr Range kCellsPerFrame{6100, 6688};

struct Brood {
    Range cells;        ///< whole cells, from the lower source to the higher
    double areaCm2 = 0; ///< of comb, both sides; standard methods report brood so, not in frames
    Range eggsADay;     ///< cells / 21: where brood of every age stands in its steady share (an assumption)
    bool combAssumed = false;
};

/// Brood of every age on so many frames full of brood on both sides.
Brood broodOn(Quarters frames, const CombShare& comb = {});

/// Cells in a square decimetre of comb, both sides, of cells of that width from wall to wall. Exactly 4/√3 · n², n
/// cells along a decimetre. Source: Betts, The size of brood-comb cells, Bee World, September 1938, pp. 106-107.
double cellsPerDm2(double cellWidthMm);

} // namespace core::rules::calc
