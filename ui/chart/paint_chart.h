#pragma once

#include "ui/chart/chart_layout.h"
#include "ui/look/colours.h"

class QPainter;

namespace ui::chart {

/// Draws a laid out chart with its left top corner at the painter's origin: screen, picture and paper alike. Without
/// colours every series, hold and mark is told apart by its shape.
void paintChart(QPainter& p, const Chart& chart, const ChartLayout& layout, const look::Colours& c);

/// The line and ring of the stop that keys or mouse read.
void paintStop(QPainter& p, const Chart& chart, const ChartLayout& layout, size_t stop, const look::Colours& c);

} // namespace ui::chart
