#include "ui/chart/series_look.h"

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

} // namespace ui::chart
