#pragma once

#include "core/base/quantity.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace ui::plan {

constexpr double kFitMargin = 72;   ///< pixels around a fitted yard
constexpr double kFitNearest = 110; ///< pixels a metre when fitted

/// What part of the yard the view shows. Layout pixels (see layout.h) plus offset() are the view's pixels.
struct Camera {
    QPointF centre{0, 0}; ///< metres from the yard's origin, x east, y south (down)
    double pixelsPerMetre = 60;
    QSizeF view{800, 600};

    static constexpr double kLeast = 1.5;
    static constexpr double kMost = 900;

    QPointF offset() const;
    QRectF visible() const; ///< in layout pixels
    core::MmPoint toPlan(const QPointF& viewPixel) const;
    QPointF toView(core::MmPoint at) const;
    void scrollBy(const QPointF& viewPixels);
    /// The ground under `fixed` (view pixels) stays there.
    void zoomBy(double factor, const QPointF& fixed);
    /// Shows all of `metres` (x east, y south) with `marginPixels` around it, no nearer than `nearest` pixels a metre.
    void fit(const QRectF& metres, double marginPixels, double nearest);
};

} // namespace ui::plan
