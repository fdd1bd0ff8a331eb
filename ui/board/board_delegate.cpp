#include "ui/board/board_delegate.h"

#include "ui/board/board_model.h"
#include "ui/look/barrier.h"
#include "ui/look/type.h"

#include <QPainter>

#include <algorithm>

namespace ui::board {

namespace {

constexpr double kSide = 12; // between the list's edge and a card
constexpr double kSign = 11; // radius of an order number

/// Writes wrapped text downwards, or only measures it.
class Column {
public:
    Column(QPainter* p, double left, double top, double width) : m_p(p), m_left(left), m_y(top), m_width(width) {}

    void text(const QString& text, const QFont& font, const QColor& colour, double indent = 0) {
        if (text.isEmpty()) return;
        const QRectF room(m_left + indent, m_y, std::max(m_width - indent, 40.0), 1e5);
        const QRectF taken = QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap, text);
        if (m_p) {
            m_p->setFont(font);
            m_p->setPen(colour);
            m_p->drawText(room, Qt::TextWordWrap, text);
        }
        m_y += taken.height();
    }
    void gap(double by) { m_y += by; }
    double y() const { return m_y; }
    double left() const { return m_left; }
    double right() const { return m_left + m_width; }
    QPainter* painter() const { return m_p; }

private:
    QPainter* m_p;
    double m_left, m_y, m_width;
};

/// A bold title at the left and figures at the right, on one line where they fit.
void heading(Column& col, const QString& title, const QString& right, const QFont& font, const QFont& lesser,
             const look::Colours& c) {
    QFont bold = font;
    bold.setBold(true);
    const QFontMetricsF metrics(bold);
    if (col.painter() && !right.isEmpty()) {
        col.painter()->setFont(lesser);
        col.painter()->setPen(c.ink);
        col.painter()->drawText(QRectF(col.left(), col.y(), col.right() - col.left(), metrics.height()),
                                Qt::AlignRight | Qt::AlignVCenter, right);
    }
    col.text(title, bold, c.ink);
}

void cautions(Column& col, const QStringList& texts, const QFont& lesser, const look::Colours& c) {
    for (const QString& text : texts) {
        col.gap(3);
        if (col.painter())
            look::paintCaution(*col.painter(), QPointF(col.left(), col.y() + (QFontMetricsF(lesser).height() - 13) / 2),
                               c);
        col.text(text, lesser, c.ink, 19);
    }
}

void sign(QPainter* p, const QPointF& centre, int order, bool chosen, const QFont& font, const look::Colours& c) {
    if (!p) return;
    QFont bold = font;
    bold.setBold(true);
    p->setPen(QPen(c.planned, 1.7));
    p->setBrush(chosen ? c.planned : c.paper);
    p->drawEllipse(centre, kSign + 1, kSign + 1);
    p->setFont(bold);
    p->setPen(chosen ? c.onPlanned : c.planned);
    p->drawText(QRectF(centre - QPointF(20, 20), QSizeF(40, 40)), Qt::AlignCenter, QString::number(order));
}

void card(QPainter* p, const QRectF& frame, const QColor& line, double wide, const look::Colours& c) {
    if (!p) return;
    p->setPen(QPen(line, wide));
    p->setBrush(c.paper);
    p->drawRoundedRect(frame.adjusted(1, 1, -1, -1), 4, 4);
}

/// Rule and limits of an open row.
void smallPrint(Column& col, const BoardRow& row, const QFont& lesser, const look::Colours& c) {
    if (row.rules.isEmpty()) return;
    col.gap(4);
    col.text(row.rules, look::lesserFont(lesser), c.quiet);
}

double layHold(QPainter* p, const BoardRow& row, bool open, bool chosen, const QRectF& area, const QFont& font,
               const look::Colours& c) {
    const auto write = [&](QPainter* on) {
        Column col(on, area.left() + look::kBarrierWide + 12, area.top() + 8, area.width() - look::kBarrierWide - 22);
        heading(col, row.title, {}, font, look::lesserFont(font), c);
        for (const QString& text : row.lines) col.text(text, look::lesserFont(font), c.ink);
        for (const QString& text : row.more) {
            col.gap(3);
            col.text(text, look::lesserFont(font), c.quiet);
        }
        if (open) smallPrint(col, row, look::lesserFont(font), c);
        return col.y() + 8 - area.top();
    };
    const double high = write(nullptr);
    if (!p) return high;
    look::paintBarrier(*p, QRectF(area.topLeft(), QSizeF(area.width(), high)).adjusted(1, 1, -1, -1), row.mark, font,
                       c);
    if (chosen) {
        p->setPen(QPen(c.planned, 2.4));
        p->setBrush(Qt::NoBrush);
        p->drawRoundedRect(QRectF(area.topLeft(), QSizeF(area.width(), high)).adjusted(1.2, 1.2, -1.2, -1.2), 4, 4);
    }
    return write(p);
}

double layUnion(QPainter* p, const BoardRow& row, bool open, bool chosen, const QRectF& area, const QFont& font,
                const look::Colours& c) {
    const QFont lesser = look::lesserFont(font);
    const auto write = [&](QPainter* on) {
        Column col(on, area.left() + 42, area.top() + 8, area.width() - 54);
        heading(col, row.title, row.right, font, lesser, c);
        col.gap(1);
        for (const QString& text : row.lines) col.text(text, lesser, c.quiet);
        cautions(col, row.cautions, lesser, c);
        if (open) {
            col.gap(4);
            for (const QString& text : row.more) {
                col.gap(3);
                col.text(text, lesser, c.ink);
            }
            smallPrint(col, row, lesser, c);
        }
        return col.y() + 8 - area.top();
    };
    const double high = write(nullptr);
    if (!p) return high;
    card(p, QRectF(area.topLeft(), QSizeF(area.width(), high)), chosen ? c.planned : c.rule, chosen ? 2.4 : 1.2, c);
    sign(p, area.topLeft() + QPointF(22, 8 + QFontMetricsF(font).height() / 2 + 2), row.order, chosen, font, c);
    return write(p);
}

double layLine(QPainter* p, const BoardRow& row, bool open, bool chosen, const QRectF& area, const QFont& font,
               const look::Colours& c) {
    const QFont lesser = look::lesserFont(font);
    const auto write = [&](QPainter* on) {
        Column col(on, area.left() + 12, area.top() + 3, area.width() - 24);
        QFont bold = font;
        bold.setBold(true);
        const double title = QFontMetricsF(bold).horizontalAdvance(row.title) + 14;
        const double right = QFontMetricsF(lesser).horizontalAdvance(row.right);
        const bool oneLine = title + right < area.width() - 24;
        heading(col, row.title, oneLine ? row.right : QString(), font, lesser, c);
        if (!oneLine) col.text(row.right, lesser, c.ink);
        if (open || row.lines.size() == 1)
            for (const QString& text : row.lines) col.text(text, lesser, c.quiet);
        cautions(col, row.cautions, lesser, c);
        if (open) smallPrint(col, row, lesser, c);
        return col.y() + 4 - area.top();
    };
    const double high = write(nullptr);
    if (p && chosen) card(p, QRectF(area.topLeft(), QSizeF(area.width(), high)), c.planned, 2, c);
    return p ? write(p) : high;
}

} // namespace

BoardDelegate::BoardDelegate(const BoardModel& model, QObject* parent) : QStyledItemDelegate(parent), m_model(model) {}

double BoardDelegate::lay(QPainter* p, const BoardRow& row, bool open, bool chosen, const QRectF& area,
                          const QFont& font, const look::Colours& c) const {
    switch (row.kind) {
    case RowKind::Hold:
        return layHold(p, row, open, chosen, area, font, c) + 8;
    case RowKind::Union:
        return layUnion(p, row, open, chosen, area, font, c) + 8;
    case RowKind::Line:
        return layLine(p, row, open, chosen, area, font, c);
    case RowKind::Section:
    case RowKind::Note:
        break;
    }
    Column col(p, area.left() + 2, area.top() + (row.kind == RowKind::Section ? 10 : 14), area.width() - 4);
    if (row.kind == RowKind::Section)
        col.text(row.title, look::lesserFont(font), c.quiet);
    else
        for (const QString& text : row.lines) col.text(text, look::lesserFont(font), c.quiet);
    return col.y() + 4 - area.top();
}

void BoardDelegate::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    p->save();
    p->setRenderHint(QPainter::Antialiasing, true);
    const bool chosen = option.state & QStyle::State_Selected;
    const QRectF area = QRectF(option.rect).adjusted(kSide, 0, -kSide, 0);
    lay(p, m_model.at(index.row()), index.row() == m_open, chosen, area, option.font, look::coloursOf(*option.widget));
    p->restore();
}

QSize BoardDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QRectF area(0, 0, m_width - 2 * kSide, 1e5);
    const double high = lay(nullptr, m_model.at(index.row()), index.row() == m_open, false, area, option.font,
                            look::coloursOf(*option.widget));
    return {m_width, static_cast<int>(high) + 1};
}

} // namespace ui::board
