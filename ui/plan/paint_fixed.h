#pragma once

#include "ui/look/colours.h"
#include "ui/plan/camera.h"
#include "ui/plan/layout.h"

class QPainter;

namespace ui::plan {

// What stands in the yard besides hives, drawn as a surveyor does: each kind told apart by its marks, not its colour.
// In the view's own pixels.

/// All of them with their words, where there is room for words; ground is laid under the texts of hives that they run
/// through.
void paintFixed(QPainter& p, const Scene& scene, const Layout& layout, const Texts& texts, const Camera& camera,
                const look::Colours& c);
/// One of them without its word.
void paintFixedMark(QPainter& p, const FixedMark& mark, const Camera& camera, const look::Colours& c);

/// What it takes of the ground in metres, x east and y south.
QRectF reachOf(const FixedMark& mark);
/// How many pixels the pointer is from its line or edge; 0 within a shed or a tree.
double apartFrom(const FixedMark& mark, const Camera& camera, const QPointF& viewPixel);

} // namespace ui::plan
