#pragma once

#include "core/base/quantity.h"

#include <vector>

// Where stands go when they are put in line. Each takes the places as they are and gives them back in the same order,
// in whole millimetres. Fewer than two places, or all at one: they stay.

namespace ui::survey {

using Places = std::vector<core::MmPoint>;

Places onWestEast(const Places& at);   ///< all as far north as they are on average
Places onNorthSouth(const Places& at); ///< all as far east
/// Straight onto the line through the first and the last.
Places onTheirLine(const Places& at);
/// Along the line of the first and the last in equal steps, the outermost where they are; each keeps its distance from
/// the line.
Places evenly(const Places& at);
/// Into straight rows of one direction, each by the shortest way; what stands alone stays. The direction and the rows
/// are those that move the stands least, counting half a metre for each row.
Places inRows(const Places& at);
/// How many rows inRows() made of them: places that stand on one line of its direction.
int rowsOf(const Places& at);

} // namespace ui::survey
