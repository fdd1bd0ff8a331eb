#pragma once

#include <QPointF>

#include <array>

namespace ui::plan {

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

} // namespace ui::plan
