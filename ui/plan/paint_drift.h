#pragma once

#include "ui/look/colours.h"
#include "ui/plan/camera.h"
#include "ui/plan/carry_guide.h"
#include "ui/plan/layout.h"

class QPainter;

namespace ui::plan {

/// Thin dashed lines from each emptied place, with open angles that point the way; to a held hive in orange, with a bar
/// across its end. In the view's own pixels.
void paintDrift(QPainter& p, const std::vector<Drift>& drift, const Camera& camera, const Layout& layout,
                const look::Colours& c);

} // namespace ui::plan
