#include "ui/plan/layout.h"

#include <QTransform>

#include <cmath>

namespace ui::plan {

namespace {

constexpr int kEdge = -2; // nobody's

/// Beyond the edges of where arcs must stay.
void insertEdges(RectGrid& grid, const Layout& layout) {
    const QRectF in = layout.within;
    if (in.isEmpty()) return;
    const QRectF all = layout.bounds.united(in).adjusted(-9000, -9000, 9000, 9000);
    grid.insert(QRectF(all.topLeft(), QPointF(all.right(), in.top())), kEdge);
    grid.insert(QRectF(QPointF(all.left(), in.bottom()), all.bottomRight()), kEdge);
    grid.insert(QRectF(all.topLeft(), QPointF(in.left(), all.bottom())), kEdge);
    grid.insert(QRectF(QPointF(in.right(), all.top()), all.bottomRight()), kEdge);
}

} // namespace

RectGrid obstaclesOf(const Scene& scene, const Layout& layout, double gap, Obstacles which) {
    RectGrid grid(layout.bounds.adjusted(-60, -60, 60, 60), 24);
    insertEdges(grid, layout);
    for (size_t i = 0; i < layout.hives.size(); ++i) {
        const HivePlace& h = layout.hives[i];
        const HiveMark& m = scene.hives[i];
        const int owner = static_cast<int>(i);
        const auto add = [&](const QRectF& r) { grid.insert(r.adjusted(-gap, -gap, gap, gap), owner); };
        if (which != Obstacles::Texts && layout.detail != Detail::Combs) add(h.body);
        if (which != Obstacles::Texts && layout.detail == Detail::Combs)
            for (const QPolygonF& part : bodyShapes(h.centre, h.size, m.headingDeg, m.boxes)) eachStrip(part, add);
        if (which == Obstacles::Bodies) continue;
        const bool asked = !layout.textsYield || layout.chosen == i;
        for (const QRectF& r : {asked ? h.label : QRectF(), h.badge, h.drop, h.laying})
            if (!r.isEmpty())
                grid.insert(r.adjusted(-gap * 0.8, -gap / 2, gap * 0.8, gap / 2),
                            owner + static_cast<int>(layout.hives.size()));
    }
    return grid;
}

bool insideBody(const HiveMark& m, const HivePlace& h, const QPointF& p, double gap) {
    const QTransform turn = QTransform().rotate(180 - m.headingDeg);
    const double w = h.size.width() / 2 + gap;
    const double l = h.size.height() / 2 + gap;
    const auto within = [&](const QPointF& local) { return std::abs(local.x()) < w && std::abs(local.y()) < l; };
    const QPointF local = turn.map(p - h.centre);
    if (within(local)) return true;
    const QRectF entrance = entranceOf(h.size).boundingRect();
    if (entrance.adjusted(-gap, -gap, gap, gap).contains(local)) return true;
    const double away = secondBoxAway(h.size);
    return m.boxes == 2 && within(turn.map(p - h.centre - QPointF(away, -away)));
}

} // namespace ui::plan
