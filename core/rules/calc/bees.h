#pragma once

#include "core/base/quantity.h"
#include "core/rules/calc/comb.h"
#include "core/rules/calc/range.h"

#include <span>

namespace core::rules::calc {

/// Bees on one Langstroth deep frame, as one source has it. They measure different things.
struct BeesPerFrame {
    int bees = 0;
    const char* means;
    const char* source;
};

/// From the fewest to the most.
std::span<const BeesPerFrame> beesPerFrame();

struct Bees {
    Range bees;         ///< whole bees, from the lowest source to the highest
    double covered = 0; ///< at 2430 a fully covered frame: what rule 4.1 counts as a frame
    bool combAssumed = false;
};

/// Bees on so many frames of bees. Frames of other boxes by their share of comb (an assumption).
Bees beesOn(Quarters frames, const CombShare& comb = {});

} // namespace core::rules::calc
