#include "ui/plan/hive_shape.h"

#include <QTransform>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ui::plan {

namespace {

QTransform frameOf(const QPointF& centre, int headingDeg) {
    return QTransform::fromTranslate(centre.x(), centre.y()).rotate(headingDeg - 180);
}

std::pair<double, double> reachAlong(const QPolygonF& shape, const QPointF& axis) {
    double low = QPointF::dotProduct(shape.front(), axis);
    double high = low;
    for (const QPointF& p : shape) {
        const double at = QPointF::dotProduct(p, axis);
        low = std::min(low, at);
        high = std::max(high, at);
    }
    return {low, high};
}

/// Some edge of `a` has all of `b` on its far side.
bool anEdgeParts(const QPolygonF& a, const QPolygonF& b) {
    for (qsizetype i = 0; i < a.size(); ++i) {
        const QPointF edge = a[(i + 1) % a.size()] - a[i];
        const QPointF axis(-edge.y(), edge.x());
        const auto [aLow, aHigh] = reachAlong(a, axis);
        const auto [bLow, bHigh] = reachAlong(b, axis);
        const double touch = 1e-6 * std::hypot(axis.x(), axis.y());
        if (aHigh <= bLow + touch || bHigh <= aLow + touch) return true;
    }
    return false;
}

/// Where the shape's edges cross the heights between `top` and `bottom`, and its corners there.
QRectF stripOf(const QPolygonF& shape, double top, double bottom) {
    double left = 1e18;
    double right = -1e18;
    const auto add = [&](double x) {
        left = std::min(left, x);
        right = std::max(right, x);
    };
    for (qsizetype i = 0; i < shape.size(); ++i) {
        const QPointF a = shape[i];
        const QPointF b = shape[(i + 1) % shape.size()];
        if (a.y() >= top && a.y() <= bottom) add(a.x());
        for (const double y : {top, bottom})
            if ((a.y() < y) != (b.y() < y)) add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
    }
    return {QPointF(left, top), QPointF(std::max(left, right), bottom)};
}

} // namespace

QPolygonF outlineOf(const QPointF& centre, const QSizeF& size, int headingDeg) {
    const double w = size.width() / 2;
    const double l = size.height() / 2;
    return frameOf(centre, headingDeg).map(QPolygonF({{-w, -l}, {w, -l}, {w, l}, {-w, l}}));
}

static double notchOf(const QSizeF& size) { return std::clamp(size.height() * 0.085, 2.0, 12.0); }

QPolygonF entranceOf(const QSizeF& size) {
    const double w = size.width() * 0.19;
    const double d = notchOf(size);
    const QPointF at(0, size.height() / 2);
    return QPolygonF({at + QPointF(-w, 0), at + QPointF(w, 0), at + QPointF(w * 0.7, d), at + QPointF(-w * 0.7, d)});
}

double secondBoxAway(const QSizeF& size) { return std::clamp(size.width() * 0.09, 2.0, 9.0); }

QRectF outlineBounds(const QPointF& centre, const QSizeF& size, int headingDeg) {
    const double turn = (headingDeg - 180) * M_PI / 180;
    const double c = headingDeg == 180 ? 1 : std::abs(std::cos(turn));
    const double s = headingDeg == 180 ? 0 : std::abs(std::sin(turn));
    const QSizeF all(size.width() * c + size.height() * s, size.width() * s + size.height() * c);
    return {centre - QPointF(all.width() / 2, all.height() / 2), all};
}

QRectF bodyBounds(const QPointF& centre, const QSizeF& size, int headingDeg, int boxes) {
    const QRectF outline = outlineBounds(centre, size, headingDeg);
    const double turn = (headingDeg - 180) * M_PI / 180;
    QRectF all = outline | outline.translated(notchOf(size) * QPointF(-std::sin(turn), std::cos(turn)));
    const double away = secondBoxAway(size);
    if (boxes == 2) all |= outline.translated(away, -away);
    return all;
}

std::vector<QPolygonF> bodyShapes(const QPointF& centre, const QSizeF& size, int headingDeg, int boxes) {
    std::vector<QPolygonF> out{outlineOf(centre, size, headingDeg), frameOf(centre, headingDeg).map(entranceOf(size))};
    const double away = secondBoxAway(size);
    if (boxes == 2) out.push_back(out.front().translated(away, -away));
    return out;
}

bool overlap(const QPolygonF& a, const QPolygonF& b) { return !anEdgeParts(a, b) && !anEdgeParts(b, a); }

QPolygonF polygonOf(const QRectF& r) { return QPolygonF({r.topLeft(), r.topRight(), r.bottomRight(), r.bottomLeft()}); }

void eachStrip(const QPolygonF& shape, const std::function<void(const QRectF&)>& take) {
    const QRectF box = shape.boundingRect();
    const QPointF edge = shape[1] - shape[0];
    if (std::min(std::abs(edge.x()), std::abs(edge.y())) < 0.5 || box.height() < 12) return take(box);
    const int strips = std::clamp(static_cast<int>(box.height() / 5), 3, 12);
    for (int i = 0; i < strips; ++i)
        take(stripOf(shape, box.top() + box.height() * i / strips, box.top() + box.height() * (i + 1) / strips));
}

} // namespace ui::plan
