#pragma once

#include "ui/look/colours.h"
#include "ui/plan/camera.h"
#include "ui/plan/layout.h"

class QPainter;

namespace ui::plan {

/// The numbers of the questions that find the hive on a small dark flag at its upper left, or the flag alone where a
/// number would not be read.
void paintAsked(QPainter& p, const HiveMark& mark, const HivePlace& place, Detail detail, const QFont& font,
                const look::Colours& c);

/// What the numbers ask, and how many hives each finds, in the lower left corner of the view.
void paintAskedKey(QPainter& p, const Camera& camera, const Scene& scene, const QFont& font, const look::Colours& c);

} // namespace ui::plan
