#include "ui/survey/paint_marks.h"

#include <QFontMetricsF>

#include <cmath>
#include <numbers>

namespace ui::survey {

void paintBubble(QPainter& p, const QPointF& at, const QString& text, const look::Colours& c) {
    if (text.isEmpty()) return;
    QFont font = p.font();
    font.setBold(true);
    p.setFont(font);
    const QFontMetricsF metrics(font);
    const QSizeF size(metrics.horizontalAdvance(text) + 12, metrics.height() + 4);
    const QRectF box(at - QPointF(size.width() / 2, size.height()), size);
    p.setPen(Qt::NoPen);
    p.setBrush(c.planned);
    p.drawRoundedRect(box, 3, 3);
    p.setPen(c.onPlanned);
    p.drawText(box, Qt::AlignCenter, text);
    font.setBold(false);
    p.setFont(font);
}

void paintDimension(QPainter& p, const QPointF& from, const QPointF& to, const QString& text, const look::Colours& c) {
    p.setPen(QPen(c.planned, 1.4));
    p.setBrush(Qt::NoBrush);
    p.drawLine(from, to);
    const QPointF way = to - from;
    const double length = std::hypot(way.x(), way.y());
    const QPointF side = length < 1 ? QPointF(0, 1) : QPointF(-way.y(), way.x()) / length;
    const QPointF slant = length < 1 ? QPointF(5, 5) : (side + way / length) * 5;
    for (const QPointF& end : {from, to}) {
        p.drawLine(end - side * 9, end + side * 9);
        p.setPen(QPen(c.planned, 2.2));
        p.drawLine(end - slant, end + slant);
        p.setPen(QPen(c.planned, 1.4));
    }
    paintBubble(p, (from + to) / 2 - QPointF(0, 6), text, c);
}

void paintCross(QPainter& p, const QPointF& at, const look::Colours& c) {
    p.setPen(QPen(c.planned, 1.4));
    for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
        p.drawLine(at + way * 4, at + way * 15);
    p.setBrush(Qt::NoBrush);
    p.drawEllipse(at, 8, 8);
}

void paintHandle(QPainter& p, const QPointF& at, bool held, const look::Colours& c) {
    p.setPen(QPen(c.planned, 1.6));
    p.setBrush(held ? c.planned : c.paper);
    p.drawRect(QRectF(at - QPointF(4.5, 4.5), QSizeF(9, 9)));
}

void paintMove(QPainter& p, const QPointF& from, const QPointF& to, double half, const look::Colours& c) {
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(c.planned, 1.4, Qt::DashLine));
    p.drawLine(from, to);
    p.setPen(QPen(c.planned, 2));
    p.drawRect(QRectF(to - QPointF(half, half), QSizeF(2 * half, 2 * half)));
}

void paintHeading(QPainter& p, const QPointF& at, int headingDeg, double length, const look::Colours& c) {
    const double radians = headingDeg * std::numbers::pi / 180;
    const QPointF way(std::sin(radians), -std::cos(radians));
    const QPointF side(-way.y(), way.x());
    const QPointF tip = at + way * length;
    p.setPen(QPen(c.planned, 2.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.setBrush(Qt::NoBrush);
    p.drawLine(at, tip);
    p.drawPolyline(QPolygonF({tip - way * 9 + side * 5, tip, tip - way * 9 - side * 5}));
}

} // namespace ui::survey
