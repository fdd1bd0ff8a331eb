#include "ui/chart/paint_chart.h"

#include "ui/chart/hatch.h"
#include "ui/chart/plot_scene.h"
#include "ui/chart/series_look.h"

#include <QPainter>
#include <QPainterPath>

namespace ui::chart {

namespace {

constexpr double kHoldApart = 6;
constexpr double kBandHigh = 10;
constexpr double kLeastBand = 3; // a hold of a day is seen

class ChartPainter {
public:
    ChartPainter(QPainter& p, const Chart& chart, const ChartLayout& layout, const look::Colours& c)
        : m_p(p), m_chart(chart), m_l(layout), m_c(c) {}

    void paint() {
        paintHead();
        if (m_l.empty) {
            text(m_l.none, m_l.font, m_c.quiet, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap);
            return;
        }
        paintTicks();
        for (const PlacedMark& m : m_l.marks) paintMarkBelow(m);
        paintThresholds();
        paintIntervals();
        PlotScene(m_chart, m_l, m_c).paint(m_p);
        paintBarsHatch();
        paintFrame();
        for (const PlacedMark& m : m_l.marks) paintMarkWords(m);
        for (size_t i = 0; i < m_l.thresholds.size(); ++i) haloed(m_l.thresholds[i].label, m_c.warnText);
        for (size_t i = 0; i < m_l.names.size(); ++i) paintName(i);
        if (!m_l.source.text.isEmpty())
            text(m_l.source, m_l.lesser, m_c.quiet, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap);
    }

private:
    void text(const Placed& placed, const QFont& font, const QColor& colour, int align) {
        if (placed.text.isEmpty()) return;
        m_p.setFont(font);
        m_p.setPen(colour);
        m_p.drawText(placed.box.adjusted(0, 0, 1, 0), align, placed.text);
    }
    void small(const Placed& placed, const QColor& colour) {
        text(placed, m_l.lesser, colour, Qt::AlignLeft | Qt::AlignVCenter);
    }
    void haloed(const Placed& placed, const QColor& colour) {
        if (placed.text.isEmpty()) return;
        QColor paper = m_c.paper;
        paper.setAlphaF(0.8F);
        m_p.fillRect(placed.box.adjusted(-2, 1, 2, -1), paper);
        small(placed, colour);
    }

    void paintHead() {
        QFont bold = m_l.font;
        bold.setBold(true);
        text(m_l.title, bold, m_c.ink, Qt::AlignLeft | Qt::AlignTop);
        m_p.setFont(m_l.lesser);
        if (m_l.valueTitle.text.isEmpty()) return;
        const bool beside = m_l.valueTitle.box.left() > 0;
        Placed placed = m_l.valueTitle;
        if (beside) placed.box.setRight(m_l.size.width());
        text(placed, m_l.lesser, m_c.quiet, (beside ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop);
    }

    void paintTicks() {
        for (const PlacedTick& t : m_l.valueTicks) {
            small(t.label, m_c.quiet);
            m_p.setPen(QPen(m_c.gridBold, 1));
            m_p.drawLine(QPointF(m_l.plot.left(), t.at), QPointF(m_l.plot.right(), t.at));
        }
        for (const PlacedTick& t : m_l.whereTicks) {
            m_p.setPen(QPen(t.strong ? m_c.gridBold : m_c.gridFine, 1));
            if (!m_chart.hasNames()) m_p.drawLine(QPointF(t.at, m_l.plot.top()), QPointF(t.at, m_l.plot.bottom()));
            m_p.setPen(QPen(m_c.quiet, 1));
            m_p.drawLine(QPointF(t.at, m_l.plot.bottom()), QPointF(t.at, m_l.plot.bottom() + 3));
            small(t.label, t.strong ? m_c.ink : m_c.quiet);
        }
        text(m_l.whereTitle, m_l.lesser, m_c.quiet, Qt::AlignLeft | Qt::AlignVCenter);
    }

    bool isBand(const PlacedMark& m) const { return m_chart.marks[m.mark].kind == MarkKind::Hold; }

    void paintMarkBelow(const PlacedMark& m) {
        const QRectF& plot = m_l.plot;
        if (isBand(m)) {
            const double right = std::min(plot.right(), std::max(m.to, m.from + kLeastBand));
            const QRectF band(QPointF(std::max(plot.left(), right - std::max(right - m.from, kLeastBand)), plot.top()),
                              QPointF(right, plot.top() + kBandHigh));
            QColor lines = m_c.warn;
            lines.setAlphaF(m_c.dark ? 0.6F : 0.5F);
            paintHatch(m_p, band, 1, QPen(lines, 1.3), kHoldApart);
            m_p.setPen(QPen(m_c.warn, 1.2));
            m_p.drawRect(band);
            return;
        }
        if (m.to > m.from) { // lasting: a bar along the top
            m_p.setPen(QPen(m_c.quiet, 3, Qt::SolidLine, Qt::FlatCap));
            m_p.drawLine(QPointF(m.from, plot.top()), QPointF(m.to, plot.top()));
        }
        QPen pen(m_c.quiet, 1.2);
        const MarkKind kind = m_chart.marks[m.mark].kind;
        if (kind == MarkKind::Treatment) pen.setDashPattern({4, 3});
        if (kind == MarkKind::Queen || kind == MarkKind::Other) pen.setDashPattern({1.5, 2.5});
        m_p.setPen(pen);
        m_p.drawLine(QPointF(m.from, plot.top() - 3), QPointF(m.from, plot.bottom()));
    }

    void paintMarkWords(const PlacedMark& m) {
        if (m.label.text.isEmpty()) return;
        small(m.label, isBand(m) ? m_c.warnText : m_c.quiet);
        paintSign(m);
    }

    /// On the line's upper end: which way bees went is told by a shape too.
    void paintSign(const PlacedMark& m) {
        const QPointF at(m.from, m_l.plot.top());
        m_p.save();
        m_p.setRenderHint(QPainter::Antialiasing);
        m_p.setPen(Qt::NoPen);
        m_p.setBrush(isBand(m) ? m_c.warn : m_c.quiet);
        switch (m_chart.marks[m.mark].kind) {
        case MarkKind::Union: // into it
            m_p.drawPolygon(QPolygonF{{at, at + QPointF(-4, -5), at + QPointF(4, -5)}});
            break;
        case MarkKind::Divide: // out of it
            m_p.drawPolygon(QPolygonF{{at + QPointF(0, -5), at + QPointF(-4, 0), at + QPointF(4, 0)}});
            break;
        case MarkKind::Treatment:
            m_p.drawRect(QRectF(at + QPointF(-2.5, -5), QSizeF(5, 5)));
            break;
        case MarkKind::Queen:
            m_p.drawEllipse(at + QPointF(0, -3), 3, 3);
            break;
        case MarkKind::Hold:
        case MarkKind::Other:
            break;
        }
        m_p.restore();
    }

    void paintThresholds() {
        m_p.setPen(QPen(m_c.warn, 1.2, Qt::CustomDashLine));
        QPen pen(m_c.warn, 1.2);
        pen.setDashPattern({8, 4});
        m_p.setPen(pen);
        for (const PlacedTick& t : m_l.thresholds)
            m_p.drawLine(QPointF(m_l.plot.left(), t.at), QPointF(m_l.plot.right(), t.at));
    }

    void paintIntervals() {
        for (size_t i = 0; i < m_l.points.size(); ++i) {
            const bool bars = m_chart.series[i].kind == Kind::Bars;
            if (!bars) paintWhiskers(i);
        }
    }

    void paintWhiskers(size_t series) {
        m_p.setPen(QPen(seriesLook(series, m_c).line.color(), 1));
        for (const PlacedPoint& p : m_l.points[series]) {
            if (!p.interval) continue;
            m_p.drawLine(QPointF(p.where.x(), p.lower), QPointF(p.where.x(), p.upper));
            for (const double y : {p.lower, p.upper})
                m_p.drawLine(QPointF(p.where.x() - 3, y), QPointF(p.where.x() + 3, y));
        }
    }

    void paintBarsHatch() {
        for (size_t i = 0; i < m_l.bars.size(); ++i) {
            const SeriesLook look = seriesLook(i, m_c);
            for (const QRectF& bar : m_l.bars[i]) paintHatch(m_p, bar, look.hatch, QPen(look.line.color(), 1), 5);
            if (m_chart.series[i].kind == Kind::Bars) paintWhiskers(i);
        }
    }

    void paintFrame() {
        m_p.setPen(QPen(m_c.quiet, 1));
        m_p.drawLine(m_l.plot.bottomLeft(), m_l.plot.bottomRight());
    }

    void paintName(size_t i) {
        const Placed& name = m_l.names[i];
        if (name.text.isEmpty()) return;
        const SeriesLook look = seriesLook(i, m_c);
        const QRectF sample(name.box.left() - kSample, name.box.top(), kSample - 4, name.box.height());
        const double y = sample.center().y();
        if (m_chart.series[i].kind == Kind::Bars) {
            const QRectF box(sample.left(), y - 5, 14, 10);
            m_p.setPen(QPen(look.line.color(), 1));
            m_p.setBrush(look.fill);
            m_p.drawRect(box);
            m_p.setBrush(Qt::NoBrush);
            paintHatch(m_p, box, look.hatch, QPen(look.line.color(), 1), 5);
        } else {
            m_p.setPen(look.line);
            if (m_chart.series[i].kind != Kind::Dots)
                m_p.drawLine(QPointF(sample.left(), y), QPointF(sample.right(), y));
            paintMarker(QPointF(sample.center().x(), y), look);
        }
        small(name, m_c.ink);
    }

    void paintMarker(const QPointF& at, const SeriesLook& look) {
        m_p.save();
        m_p.setRenderHint(QPainter::Antialiasing);
        m_p.setPen(QPen(look.line.color(), 1.2));
        m_p.setBrush(look.hollow ? m_c.paper : look.line.color());
        constexpr double r = 3.2;
        switch (look.marker) {
        case QScatterSeries::MarkerShapeRectangle:
            m_p.drawRect(QRectF(at - QPointF(r, r), QSizeF(2 * r, 2 * r)));
            break;
        case QScatterSeries::MarkerShapeTriangle:
            m_p.drawPolygon(QPolygonF{{at + QPointF(0, -r), at + QPointF(r, r), at + QPointF(-r, r)}});
            break;
        case QScatterSeries::MarkerShapeRotatedRectangle:
            m_p.drawPolygon(
                QPolygonF{{at + QPointF(0, -r), at + QPointF(r, 0), at + QPointF(0, r), at + QPointF(-r, 0)}});
            break;
        default:
            m_p.drawEllipse(at, r, r);
        }
        m_p.restore();
    }

    QPainter& m_p;
    const Chart& m_chart;
    const ChartLayout& m_l;
    const look::Colours& m_c;
};

} // namespace

void paintChart(QPainter& p, const Chart& chart, const ChartLayout& layout, const look::Colours& c) {
    p.save();
    p.setRenderHint(QPainter::Antialiasing);
    ChartPainter(p, chart, layout, c).paint();
    p.restore();
}

void paintStop(QPainter& p, const Chart& chart, const ChartLayout& layout, size_t stop, const look::Colours& c) {
    if (layout.empty || stop >= layout.stops.size()) return;
    p.save();
    p.setRenderHint(QPainter::Antialiasing);
    const auto [at, x] = layout.stops[stop];
    p.setPen(QPen(c.planned, 1));
    p.drawLine(QPointF(x, layout.plot.top()), QPointF(x, layout.plot.bottom()));
    p.setPen(QPen(c.planned, 2));
    p.setBrush(Qt::NoBrush);
    for (size_t i = 0; i < chart.series.size(); ++i)
        for (const PlacedPoint& point : layout.points[i])
            if (point.at == at) p.drawEllipse(point.where, 6, 6);
    p.restore();
}

} // namespace ui::chart
