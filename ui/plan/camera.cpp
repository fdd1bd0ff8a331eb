#include "ui/plan/camera.h"

#include <algorithm>
#include <cmath>

namespace ui::plan {

QPointF Camera::offset() const {
    const QPointF o = QPointF(view.width() / 2, view.height() / 2) - centre * pixelsPerMetre;
    return {std::round(o.x()), std::round(o.y())};
}

QRectF Camera::visible() const { return {-offset(), view}; }

core::MmPoint Camera::toPlan(const QPointF& viewPixel) const {
    const QPointF m = (viewPixel - offset()) / pixelsPerMetre * 1000;
    return {static_cast<qint32>(std::lround(m.x())), static_cast<qint32>(std::lround(-m.y()))};
}

QPointF Camera::toView(core::MmPoint at) const { return QPointF(at.x, -at.y) / 1000 * pixelsPerMetre + offset(); }

void Camera::scrollBy(const QPointF& viewPixels) { centre -= viewPixels / pixelsPerMetre; }

void Camera::zoomBy(double factor, const QPointF& fixed) {
    const double to = std::clamp(pixelsPerMetre * factor, kLeast, kMost);
    const QPointF middle(view.width() / 2, view.height() / 2);
    const QPointF ground = centre + (fixed - middle) / pixelsPerMetre;
    centre = ground - (fixed - middle) / to;
    pixelsPerMetre = to;
}

void Camera::fit(const QRectF& metres, double marginPixels, double nearest) {
    const double w = std::max(view.width() - 2 * marginPixels, 50.0);
    const double h = std::max(view.height() - 2 * marginPixels, 50.0);
    const double fits = std::min(w / std::max(metres.width(), 0.1), h / std::max(metres.height(), 0.1));
    pixelsPerMetre = std::clamp(std::min(fits, nearest), kLeast, kMost);
    centre = metres.center();
}

} // namespace ui::plan
