#pragma once

#include "ui/plan/layout.h"

namespace ui::plan {

/// The ground between hives: what must not be crossed, and what had better not be (strengths, other arcs).
struct Terrain {
    const Scene& scene;
    const Layout& layout;
    const RectGrid& hard;
    const RectGrid& soft;
    const RectGrid& texts; ///< crossed only where there is no other way; they are moved then
    double around = 60;    ///< pixels beyond the two hives that a way may take
};

/// A way over free ground from the edge of one hive to another's, found on a lattice and rounded: cubic pieces as
/// Arc::points. Empty where there is none. Up to 5 ms: for the few arcs that no single curve can draw.
std::vector<QPointF> latticePath(const Terrain& ground, size_t from, size_t to);

} // namespace ui::plan
