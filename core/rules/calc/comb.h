#pragma once

#include <optional>

// Boxes and combs against the one that most figures are printed for: the Langstroth deep, 505 mm long and 244 mm high
// outside, ten frames. Source: "What size box does...", article with table of full weights, 2021 (box sizes).

namespace core::rules::calc {

/// How much comb a frame has, 1 for a Langstroth deep frame.
struct CombShare {
    double share = 1;
    bool assumed = false; ///< the box's sizes are not recorded: taken as a Langstroth deep
};

/// By the outside of the box, along the combs and upwards. An assumption: comb goes with length times height. Against
/// the printed capacities of four other boxes it errs by 5 % at most (tests/calc).
CombShare combShare(std::optional<int> boxLengthMm, std::optional<int> boxHeightMm);

/// By one side of the comb in cm² (printed for continental frames); never by the outside of the frame.
CombShare combShareOfArea(double combCm2);

/// One side of a Langstroth deep comb: about 2700 square inches for ten frames, both sides (California grading of
/// colonies, secondary).
inline constexpr double kDeepCombCm2 = 2700 * 6.4516 / 20;

} // namespace core::rules::calc
