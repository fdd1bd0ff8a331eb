#include "ui/chart/series_look.h"

#include <QPainter>

namespace ui::chart {

SeriesLook seriesLook(size_t nth, const look::Colours& c) {
    using Shape = QScatterSeries;
    const QColor colours[] = {c.ink, c.planned, c.grows, c.quiet};
    const QList<qreal> dashes[] = {{}, {5, 3}, {1.2, 2.4}, {7, 2.5, 1.2, 2.5}};
    const Shape::MarkerShape markers[] = {Shape::MarkerShapeCircle, Shape::MarkerShapeRectangle,
                                          Shape::MarkerShapeTriangle, Shape::MarkerShapeRotatedRectangle};
    const size_t i = nth % 4;
    SeriesLook look{QPen(colours[i], 1.5, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin), markers[i], i % 2 == 1, c.paper,
                    static_cast<int>(i)};
    if (!dashes[i].isEmpty()) look.line.setDashPattern(dashes[i]);
    if (i == 0) look.fill = c.pale;
    return look;
}

void paintHatch(QPainter& p, const QRectF& over, int hatch, const QPen& pen, double apart) {
    p.save();
    p.setClipRect(over, Qt::IntersectClip);
    p.setPen(pen);
    const double high = over.height();
    for (double x = over.left() - high; x < over.right(); x += apart) {
        if (hatch & 1) p.drawLine(QPointF(x, over.bottom()), QPointF(x + high, over.top()));
        if (hatch & 2) p.drawLine(QPointF(x, over.top()), QPointF(x + high, over.bottom()));
    }
    p.restore();
}

} // namespace ui::chart
