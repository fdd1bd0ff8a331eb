#include "ui/look/barrier.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace ui::look {

void paintBarrier(QPainter& p, const QRectF& frame, const QString& letter, const QFont& font, const Colours& c) {
    QPainterPath outline;
    outline.addRoundedRect(frame, 4, 4);
    p.fillPath(outline, c.paper);
    p.save();
    p.setClipPath(outline);
    p.setClipRect(QRectF(frame.topLeft(), QSizeF(kBarrierWide, frame.height())), Qt::IntersectClip);
    p.setPen(QPen(c.warn, 3));
    for (double y = frame.top() - kBarrierWide; y < frame.bottom() + kBarrierWide; y += 10)
        p.drawLine(QPointF(frame.left(), y + kBarrierWide), QPointF(frame.left() + kBarrierWide, y));
    p.restore();
    QFont bold = font;
    bold.setBold(true);
    const double side = std::max(22.0, QFontMetricsF(bold).height() + 3);
    const QRectF badge(frame.left() + (kBarrierWide - side) / 2, frame.top() + 8, side, side);
    p.setPen(QPen(c.paper, 3));
    p.setBrush(c.warn);
    p.drawRoundedRect(badge, 3, 3);
    p.setFont(bold);
    p.setPen(c.onWarn);
    p.drawText(badge, Qt::AlignCenter, letter);
    p.setPen(QPen(c.warn, 1.4));
    p.setBrush(Qt::NoBrush);
    p.drawPath(outline);
}

void paintCaution(QPainter& p, const QPointF& at, const Colours& c) {
    p.setPen(QPen(c.warn, 1.7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.setBrush(Qt::NoBrush);
    p.drawPolygon(QPolygonF({at + QPointF(6, 1), at + QPointF(12, 11.5), at + QPointF(0, 11.5)}));
}

} // namespace ui::look
