#pragma once

#include "ui/plan/layout.h"

namespace ui::plan {

/// Draws the arcs of unions and shake-outs into `layout`: from the edge of the hive that is moved to the edge of its
/// host, around other hives and all texts where any of the curves tried is free (else by the lattice of free ground),
/// with the number and metres on free ground. About a third of a millisecond an arc.
void routeArcs(const Scene& scene, const Texts& texts, Layout& layout);

/// The arcs of `routed` at the zoom of `to`, so that a zoom need not route at every step.
void scaleArcs(const Layout& routed, const Texts& texts, Layout& to);

} // namespace ui::plan
