#include "ui/plan/paint_drift.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {

/// Half of what is drawn of a hive: lines end at its edge.
double bodyOf(const Layout& layout) {
    return layout.hives.empty() ? 8.0
                                : std::hypot(layout.hives.front().size.width(), layout.hives.front().size.height()) / 2;
}

void paintAngle(QPainter& p, const QPointF& tip, const QPointF& way, double size) {
    const QPointF side(-way.y(), way.x());
    p.drawPolyline(QPolygonF({tip - way * size + side * size * 0.6, tip, tip - way * size - side * size * 0.6}));
}

void paintWay(QPainter& p, const QPointF& from, const QPointF& to, bool held, double body, const look::Colours& c) {
    const QPointF whole = to - from;
    const double length = std::hypot(whole.x(), whole.y());
    if (length < 2) return;
    const QPointF way = whole / length;
    const double clear = std::min(body + 3, length * 0.42);
    const QPointF begin = from + way * clear * 0.6;
    const QPointF end = to - way * clear;
    const QColor line = held ? c.warn : c.quiet;
    QPen pen(line, held ? 2.0 : 1.2, Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({5, 4});
    p.setPen(pen);
    p.drawLine(begin, end);
    p.setPen(QPen(line, held ? 2.0 : 1.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const double size = held ? 8 : 6.5;
    paintAngle(p, (begin + end) / 2 + way * size / 2, way, size);
    paintAngle(p, end, way, size);
    if (!held) return;
    const QPointF side(-way.y(), way.x());
    p.setPen(QPen(line, 3, Qt::SolidLine, Qt::FlatCap));
    p.drawLine(end + way * 2.5 - side * 9, end + way * 2.5 + side * 9);
}

} // namespace

void paintDrift(QPainter& p, const std::vector<Drift>& drift, const Camera& camera, const Layout& layout,
                const look::Colours& c) {
    if (drift.empty()) return;
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    p.setBrush(Qt::NoBrush);
    const double body = bodyOf(layout);
    for (const Drift& d : drift)
        for (const Drift::To& to : d.to) paintWay(p, camera.toView(d.from), camera.toView(to.at), to.held, body, c);
    p.restore();
}

} // namespace ui::plan
