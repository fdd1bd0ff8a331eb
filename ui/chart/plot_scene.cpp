#include "ui/chart/plot_scene.h"

#include "ui/chart/series_look.h"

#include <QGraphicsLayout>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>

#include <span>

namespace ui::chart {

namespace {

constexpr double kMarker = 6.5;
constexpr double kLeastMarker = 3.5;

std::vector<QPointF> stepsOf(std::span<const PlacedPoint> points) {
    std::vector<QPointF> out;
    for (const PlacedPoint& p : points) {
        if (!out.empty()) out.emplace_back(p.where.x(), out.back().y());
        out.push_back(p.where);
    }
    return out;
}

/// Markers at the edge of the plot are drawn whole.
QRectF roomOf(const ChartLayout& layout) { return layout.plot.adjusted(-kMarker, -kMarker, kMarker, kMarker); }

std::vector<QPointF> placesOf(std::span<const PlacedPoint> points) {
    std::vector<QPointF> out;
    for (const PlacedPoint& p : points) out.push_back(p.where);
    return out;
}

} // namespace

PlotScene::PlotScene(const Chart& chart, const ChartLayout& layout, const look::Colours& c)
    : m_chart(chart), m_layout(layout), m_plot(new QChart), m_across(new QValueAxis), m_up(new QValueAxis) {
    m_scene.addItem(m_plot);
    m_plot->setBackgroundVisible(false);
    m_plot->setMargins(QMargins());
    m_plot->legend()->hide();
    m_plot->layout()->setContentsMargins(0, 0, 0, 0);
    addAxes();
    for (size_t i = 0; i < chart.series.size(); ++i) addSeries(i, c);
    m_plot->resize(layout.size);
    m_plot->setPlotArea(roomOf(layout));
    m_plot->layout()->activate();
    m_scene.setSceneRect(QRectF(QPointF(), layout.size));
}

void PlotScene::paint(QPainter& p) {
    const QRectF all(QPointF(), m_layout.size);
    m_scene.render(&p, all, all);
}

void PlotScene::addAxes() {
    const QRectF room = roomOf(m_layout);
    m_across->setRange(room.left(), room.right());
    m_up->setRange(-room.bottom(), -room.top()); // upwards
    for (QValueAxis* axis : {m_across, m_up}) {
        axis->setGridLineVisible(false); // it keeps to a plot area of its own
        axis->setLabelsVisible(false);
        axis->setLineVisible(false);
    }
    m_plot->addAxis(m_across, Qt::AlignBottom);
    m_plot->addAxis(m_up, Qt::AlignLeft);
}

void PlotScene::addSeries(size_t nth, const look::Colours& c) {
    const Kind kind = m_chart.series[nth].kind;
    if (kind == Kind::Bars) return addBars(nth, c);
    if (kind != Kind::Dots) {
        size_t from = 0;
        for (const size_t count : m_layout.runs[nth]) {
            const auto run = std::span(m_layout.points[nth]).subspan(from, count);
            from += count;
            if (count > 1) addLine(kind == Kind::Step ? stepsOf(run) : placesOf(run), seriesLook(nth, c).line);
        }
    }
    addMarkers(nth, c);
}

void PlotScene::addLine(const std::vector<QPointF>& points, const QPen& pen) {
    auto* line = new QLineSeries;
    for (const QPointF& p : points) line->append(p.x(), -p.y());
    line->setPen(pen);
    m_plot->addSeries(line);
    line->attachAxis(m_across);
    line->attachAxis(m_up);
}

void PlotScene::addMarkers(size_t nth, const look::Colours& c) {
    const SeriesLook look = seriesLook(nth, c);
    auto* markers = new QScatterSeries;
    for (const PlacedPoint& p : m_layout.points[nth]) markers->append(p.where.x(), -p.where.y());
    const double room = m_layout.plot.width() / static_cast<double>(std::max<size_t>(1, m_layout.points[nth].size()));
    markers->setMarkerSize(std::clamp(room * 0.8, kLeastMarker, kMarker));
    markers->setMarkerShape(look.marker);
    markers->setPen(QPen(look.line.color(), 1.2));
    markers->setBrush(look.hollow ? c.paper : look.line.color());
    m_plot->addSeries(markers);
    markers->attachAxis(m_across);
    markers->attachAxis(m_up);
}

/// One outline along all of them.
void PlotScene::addBars(size_t nth, const look::Colours& c) {
    const SeriesLook look = seriesLook(nth, c);
    for (const QRectF& bar : m_layout.bars[nth]) {
        auto* top = new QLineSeries;
        auto* foot = new QLineSeries;
        for (const double x : {bar.left(), bar.right()}) {
            top->append(x, -bar.top());
            foot->append(x, -bar.bottom());
        }
        auto* area = new QAreaSeries(top, foot);
        top->setParent(area);
        foot->setParent(area);
        area->setPen(QPen(look.line.color(), 1));
        area->setBrush(look.fill);
        m_plot->addSeries(area);
        area->attachAxis(m_across);
        area->attachAxis(m_up);
    }
}

} // namespace ui::chart
