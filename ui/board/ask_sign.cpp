#include "ui/board/ask_sign.h"

#include <QPainter>
#include <QPainterPath>

namespace ui::board {

namespace {

void paintPin(QPainter& p, const QPointF& at, const look::Colours& c) {
    p.setBrush(c.planned);
    p.drawEllipse(at + QPointF(6.5, 4), 3.2, 3.2);
    p.drawLine(at + QPointF(6.5, 7), at + QPointF(6.5, 12.5));
}

void paintStruck(QPainter& p, const QPointF& at) {
    p.drawEllipse(at + QPointF(6.5, 6.5), 5.2, 5.2);
    p.drawLine(at + QPointF(2.9, 10.1), at + QPointF(10.1, 2.9));
}

void paintOpenStand(QPainter& p, const QPointF& at, const look::Colours& c) {
    p.setPen(QPen(c.ink, 1.4, Qt::DashLine));
    p.drawRect(QRectF(at + QPointF(1.5, 2), QSizeF(10, 9)));
}

void paintTurn(QPainter& p, const QPointF& at) {
    p.drawArc(QRectF(at + QPointF(1.5, 1.5), QSizeF(10, 10)), 60 * 16, 270 * 16);
    p.drawPolyline(QPolygonF({at + QPointF(6.2, 0.2), at + QPointF(9.6, 2.2), at + QPointF(7, 5.2)}));
}

} // namespace

void paintAskSign(QPainter& p, const QPointF& at, AskSign sign, const look::Colours& c) {
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    p.setPen(QPen(sign == AskSign::Forbidden ? c.ink : c.planned, 1.7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.setBrush(Qt::NoBrush);
    switch (sign) {
    case AskSign::Pinned:
        paintPin(p, at, c);
        break;
    case AskSign::Forbidden:
        paintStruck(p, at);
        break;
    case AskSign::LeftOut:
        paintOpenStand(p, at, c);
        break;
    case AskSign::Turned:
        paintTurn(p, at);
        break;
    case AskSign::None:
        break;
    }
    p.restore();
}

} // namespace ui::board
