#include "ui/chart/hatch.h"

#include <QPainter>

namespace ui::chart {

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
