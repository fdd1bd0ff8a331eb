#include "ui/close/row_frame.h"

#include <QPainter>
#include <QStyleOptionViewItem>

namespace ui::close {

void paintRowFrame(QPainter& p, const QStyleOptionViewItem& option, const QRectF& area, const look::Colours& c,
                   bool ruled) {
    if (option.state & QStyle::State_Selected) {
        const bool focused = option.state & QStyle::State_HasFocus;
        p.setPen(QPen(focused ? c.planned : c.rule, focused ? 2.4 : 1.2));
        p.setBrush(c.paper);
        p.drawRoundedRect(area.adjusted(1.2, 1.2, -1.2, -1.2), 4, 4);
    } else if (ruled) {
        p.setPen(QPen(c.rule, 1));
        p.drawLine(area.bottomLeft() + QPointF(8, 0), area.bottomRight() - QPointF(8, 0));
    }
}

double wordsIn(QPainter* p, const QRectF& room, const QString& words, const QFont& font, const QColor& colour) {
    if (words.isEmpty()) return 0;
    if (p) {
        p->setFont(font);
        p->setPen(colour);
        p->drawText(room, Qt::TextWordWrap, words);
    }
    return QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap, words).height();
}

} // namespace ui::close
