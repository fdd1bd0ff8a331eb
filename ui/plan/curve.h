#pragma once

#include <QLineF>
#include <QPointF>
#include <QRectF>

#include <algorithm>
#include <functional>
#include <vector>

namespace ui::plan {

constexpr double kLeave = 5;  ///< pixels between a hive's edge and the end of an arc
constexpr double kArrive = 6; ///< and the tip of its arrow

/// One cubic Bézier piece.
struct Curve {
    QPointF from, control1, control2, to;

    QPointF at(double t) const;
    QPointF tangent(double t) const; ///< not of unit length
    /// The piece between t0 and t1, 0 ≤ t0 < t1 ≤ 1.
    Curve part(double t0, double t1) const;
};

inline QPointF Curve::at(double t) const {
    const double u = 1 - t;
    return u * u * u * from + 3 * u * u * t * control1 + 3 * u * t * t * control2 + t * t * t * to;
}

inline QPointF Curve::tangent(double t) const {
    const double u = 1 - t;
    return 3 * u * u * (control1 - from) + 6 * u * t * (control2 - control1) + 3 * t * t * (to - control2);
}

inline Curve Curve::part(double t0, double t1) const {
    const double third = (t1 - t0) / 3;
    const QPointF a = at(t0);
    const QPointF d = at(t1);
    return {a, a + third * tangent(t0), d - third * tangent(t1), d};
}

/// The square with this middle and half this side.
inline QRectF around(const QPointF& at, double r) { return {at - QPointF(r, r), QSizeF(2 * r, 2 * r)}; }

/// Squares of 4 pixels along cubic pieces as Arc::points.
inline void eachStep(const std::vector<QPointF>& points, const std::function<void(const QRectF&)>& take) {
    for (size_t p = 0; p + 3 < points.size(); p += 3) {
        const Curve c{points[p], points[p + 1], points[p + 2], points[p + 3]};
        const double length = QLineF(c.from, c.control1).length() + QLineF(c.control1, c.control2).length() +
                              QLineF(c.control2, c.to).length();
        const int steps = std::clamp(static_cast<int>(length / 3), 4, 400);
        for (int i = 0; i <= steps; ++i) take(around(c.at(1.0 * i / steps), 2));
    }
}

} // namespace ui::plan
