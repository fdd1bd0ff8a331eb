#pragma once

#include "ui/look/colours.h"

#include <QBrush>
#include <QPen>
#include <QtCharts/QScatterSeries>

namespace ui::chart {

/// How the nth series of a chart is drawn: colour, dashes, marker and filling differ each by themselves.
struct SeriesLook {
    QPen line;
    QScatterSeries::MarkerShape marker;
    bool hollow = false; ///< its markers are filled with paper
    QColor fill;         ///< of bars
    int hatch = 0;       ///< lines over bars: 0 none, 1 rising, 2 falling, 3 both
};

SeriesLook seriesLook(size_t nth, const look::Colours& c);

} // namespace ui::chart
