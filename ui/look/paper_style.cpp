#include "ui/look/paper_style.h"

#include "ui/look/colours.h"

#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QStyleOption>

#include <algorithm>

namespace ui::look {

namespace {

void frame(QPainter* p, const QStyleOption* option, const Colours& c, double radius) {
    const bool focus = option->state & QStyle::State_HasFocus;
    p->setRenderHint(QPainter::Antialiasing, true);
    p->setPen(QPen(focus ? c.planned : c.quiet, focus ? 2 : 1));
    p->setBrush(option->state & QStyle::State_Enabled ? c.paper : c.desk);
    const double in = focus ? 1 : 0.5;
    p->drawRoundedRect(QRectF(option->rect).adjusted(in, in, -in, -in), radius, radius);
}

void tick(QPainter* p, const QRectF& box, const Colours& c) {
    p->setPen(QPen(c.ink, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const auto at = [&box](double x, double y) {
        return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
    };
    p->drawPolyline(QPolygonF({at(0.24, 0.52), at(0.43, 0.72), at(0.77, 0.28)}));
}

/// A ring, and a dot in it where it is chosen.
void radio(QPainter* p, const QStyleOption* option, const Colours& c) {
    const QRectF box(option->rect);
    const double side = std::min(box.width(), box.height());
    frame(p, option, c, side / 2);
    if (!(option->state & QStyle::State_On)) return;
    p->setPen(Qt::NoPen);
    p->setBrush(c.ink);
    p->drawEllipse(box.center(), side / 4, side / 4);
}

} // namespace

PaperStyle::PaperStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void PaperStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* p,
                               const QWidget* widget) const {
    const bool ours =
        element == PE_IndicatorCheckBox || element == PE_IndicatorRadioButton || element == PE_PanelLineEdit;
    if (!widget || !ours) return QProxyStyle::drawPrimitive(element, option, p, widget);
    const bool inOther = widget->parentWidget() && (widget->parentWidget()->inherits("QAbstractSpinBox") ||
                                                    widget->parentWidget()->inherits("QComboBox"));
    if (element == PE_PanelLineEdit && inOther) return QProxyStyle::drawPrimitive(element, option, p, widget);
    p->save();
    if (element == PE_IndicatorRadioButton)
        radio(p, option, coloursOf(*widget));
    else
        frame(p, option, coloursOf(*widget), 2.5);
    if (element == PE_IndicatorCheckBox && (option->state & State_On))
        tick(p, QRectF(option->rect), coloursOf(*widget));
    p->restore();
}

void PaperStyle::polish(QWidget* widget) {
    constexpr int kFromTheEdge = 3;
    QProxyStyle::polish(widget);
    // What a label or a tip shows may come from a book of someone else: a name in it is a name, never a page that
    // loads pictures from files. What is meant to be rich says so itself.
    auto* label = qobject_cast<QLabel*>(widget);
    if (label && label->textFormat() == Qt::AutoText) label->setTextFormat(Qt::PlainText);
    auto* edit = qobject_cast<QLineEdit*>(widget);
    if (edit && edit->textMargins().isNull()) edit->setTextMargins(kFromTheEdge, 0, kFromTheEdge, 0);
}

} // namespace ui::look
