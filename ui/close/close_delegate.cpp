#include "ui/close/close_delegate.h"

#include "ui/close/close_model.h"
#include "ui/close/row_frame.h"
#include "ui/look/type.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace ui::close {

using core::StripOutcome;

namespace {

constexpr double kSide = 12; // between the list's edge and a line
constexpr double kHigh = 7;  // above and below the words

/// As it is made on paper: a tick, a stroke, an arrow that turns away.
void paintBox(QPainter& p, const QRectF& box, const Line& line, const look::Colours& c) {
    const bool written = line.stage == Stage::Written || line.stage == Stage::Elsewhere;
    p.setPen(QPen(written ? c.quiet : c.ink, 1.3));
    p.setBrush(c.paper);
    p.drawRoundedRect(box, 2, 2);
    if (!line.outcome) return;
    const double s = box.width();
    const auto at = [&](double x, double y) { return QPointF(box.left() + x * s, box.top() + y * s); };
    QPainterPath sign;
    switch (*line.outcome) {
    case StripOutcome::Done:
        sign.moveTo(at(0.18, 0.5));
        sign.lineTo(at(0.42, 0.78));
        sign.lineTo(at(0.95, 0.02));
        break;
    case StripOutcome::NotDone:
        sign.moveTo(at(0.2, 0.5));
        sign.lineTo(at(0.8, 0.5));
        break;
    case StripOutcome::Changed:
        sign.moveTo(at(0.2, 0.75));
        sign.lineTo(at(0.2, 0.4));
        sign.lineTo(at(0.8, 0.4));
        sign.moveTo(at(0.55, 0.18));
        sign.lineTo(at(0.8, 0.4));
        sign.lineTo(at(0.55, 0.62));
        break;
    }
    p.setPen(QPen(written ? c.grows : c.planned, 2.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.setBrush(Qt::NoBrush);
    p.drawPath(sign);
}

QString firstSentence(const QString& text) {
    const qsizetype end = text.indexOf(QStringLiteral(". "));
    return end < 0 ? text : text.left(end) + QStringLiteral(" …");
}

} // namespace

CloseDelegate::CloseDelegate(const CloseModel& model, QObject* parent) : QStyledItemDelegate(parent), m_model(model) {}

double CloseDelegate::lay(QPainter* p, const Line& line, bool open, const QRectF& area, const QFont& font,
                          const look::Colours& c) const {
    const QFont lesser = look::lesserFont(font);
    QFont bold = font;
    bold.setBold(true);
    const QFontMetricsF metrics(bold);
    const double row = metrics.height();
    const double numbers = QFontMetricsF(font).horizontalAdvance(QStringLiteral("00")) + 8;
    const double side = std::round(row * 0.72);
    const double left = area.left() + 8 + numbers + side + 12;
    const double width = area.right() - 10 - left;
    const QString outcome = line.outcomeText();
    const QFontMetricsF small(lesser);
    const bool beside = metrics.horizontalAdvance(line.title()) + small.horizontalAdvance(outcome) + 16 <= width;
    double y = area.top() + kHigh;
    if (p) {
        p->setFont(font);
        p->setPen(c.quiet);
        if (line.number > 0)
            p->drawText(QRectF(area.left() + 8, y, numbers - 8, row), Qt::AlignRight | Qt::AlignVCenter,
                        QString::number(line.number));
        paintBox(*p, QRectF(area.left() + 8 + numbers, y + (row - side) / 2, side, side), line, c);
        if (beside) {
            p->setFont(lesser);
            p->setPen(line.stage == Stage::Drafted ? c.planned : c.quiet);
            p->drawText(QRectF(left, y, width, row), Qt::AlignRight | Qt::AlignVCenter, outcome);
        }
    }
    const bool over = line.stage == Stage::Written || line.stage == Stage::Elsewhere;
    const auto add = [&](const QString& words, const QFont& f, const QColor& colour) {
        y += wordsIn(p, QRectF(left, y, std::max(width, 40.0), 1e5), words, f, colour);
    };
    add(line.title(), bold, over ? c.quiet : c.ink);
    if (!beside) add(outcome, lesser, line.stage == Stage::Drafted ? c.planned : c.quiet);
    if (line.number == 0) add(WriteBack::tr("not on the sheet"), lesser, c.quiet);
    add(line.instead, lesser, over ? c.quiet : c.ink);
    add(line.note, lesser, over ? c.quiet : c.ink);
    add(open ? line.problem : firstSentence(line.problem), lesser, c.warnText);
    return y + kHigh - area.top();
}

void CloseDelegate::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const look::Colours c = look::coloursOf(*option.widget);
    p->save();
    p->setRenderHint(QPainter::Antialiasing, true);
    const QRectF area = QRectF(option.rect).adjusted(kSide, 0, -kSide, 0);
    paintRowFrame(*p, option, area, c, true);
    lay(p, m_model.at(index.row()), index.row() == m_open, area, option.font, c);
    p->restore();
}

QSize CloseDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QRectF area(0, 0, m_width - 2 * kSide, 1e5);
    const double high = lay(nullptr, m_model.at(index.row()), index.row() == m_open, area, option.font,
                            look::coloursOf(*option.widget));
    return {m_width, static_cast<int>(high) + 1};
}

} // namespace ui::close
