#pragma once

#include "ui/plan/layout.h"

namespace ui::plan {

/// A way over free ground from the edge of one hive to another's, found on a lattice and rounded: cubic pieces as
/// Arc::points. Empty where there is none. Up to 5 ms: for the few arcs that no single curve can draw.
std::vector<QPointF> latticePath(const Layout& layout, const RectGrid& obstacles, size_t from, size_t to);

} // namespace ui::plan
