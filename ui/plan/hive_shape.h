#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QSizeF>

#include <functional>
#include <vector>

namespace ui::plan {

/// The turned outline of a hive of this size (across and along the combs).
QPolygonF outlineOf(const QPointF& centre, const QSizeF& size, int headingDeg);
/// Its entrance, a notch outside the outline, in the hive's own frame: origin at its centre, the entrance towards +y.
QPolygonF entranceOf(const QSizeF& size);
/// How far a second box's outline is drawn up and to the right of the first.
double secondBoxAway(const QSizeF& size);

/// The bounds of the turned outline; with its entrance, and a second box.
QRectF outlineBounds(const QPointF& centre, const QSizeF& size, int headingDeg);
QRectF bodyBounds(const QPointF& centre, const QSizeF& size, int headingDeg, int boxes);

/// All that is drawn of a hive's body, as convex shapes: outline, entrance, second box.
std::vector<QPolygonF> bodyShapes(const QPointF& centre, const QSizeF& size, int headingDeg, int boxes);

/// The two convex shapes have more than an edge in common.
bool overlap(const QPolygonF& a, const QPolygonF& b);
QPolygonF polygonOf(const QRectF& rect);

/// Calls `take` with upright rectangles that together cover the convex shape: itself where it stands square, else
/// strips.
void eachStrip(const QPolygonF& shape, const std::function<void(const QRectF&)>& take);

} // namespace ui::plan
