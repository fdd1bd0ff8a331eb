#pragma once

#include "ui/chart/chart_layout.h"
#include "ui/look/colours.h"

#include <QGraphicsScene>

class QChart;
class QXYSeries;
class QValueAxis;

namespace ui::chart {

/// The plot itself by Qt Charts: lines, markers, bars; no text. Its axes count in pixels of the layout.
class PlotScene {
public:
    PlotScene(const Chart& chart, const ChartLayout& layout, const look::Colours& c);
    void paint(QPainter& p);

private:
    void addAxes();
    void addSeries(size_t nth, const look::Colours& c);
    void addLine(const std::vector<QPointF>& points, const QPen& pen);
    void addMarkers(size_t nth, const look::Colours& c);
    void addBars(size_t nth, const look::Colours& c);

    const Chart& m_chart;
    const ChartLayout& m_layout;
    QGraphicsScene m_scene;
    QChart* m_plot;
    QValueAxis *m_across, *m_up;
};

} // namespace ui::chart
