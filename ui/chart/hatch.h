#pragma once

#include <QPen>
#include <QRectF>

class QPainter;

namespace ui::chart {

/// Thin parallel lines over a rectangle, vectors on paper too. `hatch`: 0 none, 1 rising, 2 falling, 3 both.
void paintHatch(QPainter& p, const QRectF& over, int hatch, const QPen& pen, double apart);

} // namespace ui::chart
