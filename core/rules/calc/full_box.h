#pragma once

#include "core/base/quantity.h"
#include "core/model/settings.h"
#include "core/rules/calc/range.h"

#include <optional>

namespace core::rules::calc {

/// Kilograms of a box full of honey, the range between two published tables for ten-frame Langstroth boxes: deep 80 to
/// 85 lb, medium 50 to 60, shallow 40 to 55 (article on choosing box sizes, 2021; box size guide of a trade page). The
/// nearest of the three heights is taken; other frames, lengths and heights go by their share (an assumption).
/// Lengths and heights outside, in mm; `lengthMm` not recorded: as a Langstroth.
Range fullBoxKg(int frames, std::optional<int> lengthMm, int heightMm);

/// Kilograms to lift at a union for one brood box of a hive of that weight: without floor and lid, and of two boxes
/// at most without an empty second one, at least an empty one. The tares are the book's settings (assumptions).
Range broodBoxKg(Decagrams gross, int boxes, const Settings& settings);

} // namespace core::rules::calc
