#include "ui/board/board_delegate.h"

#include "ui/board/ask_sign.h"
#include "ui/board/board_model.h"
#include "ui/look/barrier.h"
#include "ui/look/type.h"

#include <QPainter>

namespace ui::board {

namespace {

constexpr double kSide = 12; // between the list's edge and a card
constexpr double kSign = 11; // radius of an order number

/// One row: what it is drawn on (nothing: it is only measured), and how.
struct Drawn {
    QPainter* p;
    const BoardRow& row;
    bool open;
    bool chosen;
    QRectF area;
    const QFont& font;
    const look::Colours& c;
    std::vector<Chip>* chips;

    Column column(QPainter* on, double left, double top, double right) const {
        return {on, area.left() + left, area.top() + top, area.width() - left - right, font, c, chips};
    }
    QRectF frame(double high) const { return {area.topLeft(), QSizeF(area.width(), high)}; }
};

void sign(const Drawn& d, const QPointF& centre) {
    QFont bold = d.font;
    bold.setBold(true);
    d.p->setPen(QPen(d.c.planned, 1.7));
    d.p->setBrush(d.chosen ? d.c.planned : d.c.paper);
    d.p->drawEllipse(centre, kSign + 1, kSign + 1);
    d.p->setFont(bold);
    d.p->setPen(d.chosen ? d.c.onPlanned : d.c.planned);
    d.p->drawText(QRectF(centre - QPointF(20, 20), QSizeF(40, 40)), Qt::AlignCenter, QString::number(d.row.order));
}

void card(const Drawn& d, double high, const QColor& line, double wide) {
    d.p->setPen(QPen(line, wide));
    d.p->setBrush(d.c.paper);
    d.p->drawRoundedRect(d.frame(high).adjusted(1, 1, -1, -1), 4, 4);
}

double layHold(const Drawn& d) {
    const auto write = [&](QPainter* on) {
        Column col = d.column(on, look::kBarrierWide + 12, 8, 10);
        col.heading(d.row.title, {}, d.row);
        for (const QString& text : d.row.lines) col.text(text, col.lesser(), d.c.ink);
        for (const QString& text : d.row.more) {
            col.gap(3);
            col.text(text, col.lesser(), d.c.quiet);
        }
        if (d.open) col.smallPrint(d.row);
        return col.y() + 8 - d.area.top();
    };
    const double high = write(nullptr);
    if (!d.p) return high;
    look::paintBarrier(*d.p, d.frame(high).adjusted(1, 1, -1, -1), d.row.mark, d.font, d.c);
    if (d.chosen) {
        d.p->setPen(QPen(d.c.planned, 2.4));
        d.p->setBrush(Qt::NoBrush);
        d.p->drawRoundedRect(d.frame(high).adjusted(1.2, 1.2, -1.2, -1.2), 4, 4);
    }
    return write(d.p);
}

double layUnion(const Drawn& d) {
    const auto write = [&](QPainter* on) {
        Column col = d.column(on, 42, 8, 12);
        col.heading(d.row.title, d.row.right, d.row);
        col.gap(1);
        col.asked(d.row);
        for (const QString& text : d.row.lines) col.text(text, col.lesser(), d.c.quiet);
        col.cautions(d.row.cautions);
        if (d.open) {
            col.gap(2);
            col.offers(d.row, d.row.offersAlways, d.row.offers.size());
            col.gap(4);
            for (const QString& text : d.row.more) {
                col.gap(3);
                col.text(text, col.lesser(), d.c.ink);
            }
            col.smallPrint(d.row);
        }
        return col.y() + 8 - d.area.top();
    };
    const double high = write(nullptr);
    if (!d.p) return high;
    card(d, high, d.chosen ? d.c.planned : d.c.rule, d.chosen ? 2.4 : 1.2);
    sign(d, d.area.topLeft() + QPointF(22, 8 + QFontMetricsF(d.font).height() / 2 + 2));
    return write(d.p);
}

double layLine(const Drawn& d) {
    const bool asked = d.row.kind == RowKind::Asked;
    const auto write = [&](QPainter* on) {
        Column col = d.column(on, asked ? 12 + 19 : 12, asked ? 5 : 3, 12);
        col.heading(d.row.title, d.row.right, d.row);
        col.asked(d.row);
        if (d.open || d.row.lines.size() == 1)
            for (const QString& text : d.row.lines) col.text(text, col.lesser(), d.c.quiet);
        col.cautions(d.row.cautions);
        if (d.open) {
            col.offers(d.row, d.row.offersAlways, d.row.offers.size());
            col.smallPrint(d.row);
        }
        return col.y() + (asked ? 5 : 4) - d.area.top();
    };
    const double high = write(nullptr);
    if (!d.p) return high;
    if (d.chosen) card(d, high, d.c.planned, 2);
    const double line = QFontMetricsF(d.font).height();
    if (asked) paintAskSign(*d.p, d.area.topLeft() + QPointF(12, 5 + (line - kAskSign) / 2), d.row.sign, d.c);
    return write(d.p);
}

double layText(const Drawn& d) {
    const bool section = d.row.kind == RowKind::Section;
    Column col = d.column(d.p, 2, section ? 10 : 14, 2);
    if (section)
        col.text(d.row.title, col.lesser(), d.c.quiet);
    else
        for (const QString& text : d.row.lines) col.text(text, col.lesser(), d.c.quiet);
    return col.y() + 4 - d.area.top();
}

/// Draws (or only measures) a row; the height it takes.
double lay(const Drawn& d) {
    switch (d.row.kind) {
    case RowKind::Hold:
        return layHold(d) + 8;
    case RowKind::Union:
        return layUnion(d) + 8;
    case RowKind::Asked:
    case RowKind::Line:
        return layLine(d);
    case RowKind::Section:
    case RowKind::Note:
        break;
    }
    return layText(d);
}

} // namespace

BoardDelegate::BoardDelegate(const BoardModel& model, QObject* parent) : QStyledItemDelegate(parent), m_model(model) {
    connect(&model, &QAbstractItemModel::modelReset, this, &BoardDelegate::forget);
    connect(&model, &QAbstractItemModel::dataChanged, this, [this](const QModelIndex& row) {
        const auto at = static_cast<size_t>(row.row());
        if (at < m_heights.size()) m_heights[at] = 0;
    });
}

std::vector<Chip> BoardDelegate::chipsOf(int row, const QRect& item, const QFont& font, const QWidget& view) const {
    std::vector<Chip> out;
    lay({nullptr, m_model.at(row), row == m_open, false, QRectF(item).adjusted(kSide, 0, -kSide, 0), font,
         look::coloursOf(view), &out});
    return out;
}

void BoardDelegate::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    p->save();
    p->setRenderHint(QPainter::Antialiasing, true);
    lay({p, m_model.at(index.row()), index.row() == m_open, (option.state & QStyle::State_Selected) != 0,
         QRectF(option.rect).adjusted(kSide, 0, -kSide, 0), option.font, look::coloursOf(*option.widget), nullptr});
    p->restore();
}

void BoardDelegate::setWidth(int width) {
    if (width == m_width) return;
    m_width = width;
    forget();
}

QSize BoardDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int row = index.row();
    const auto at = static_cast<size_t>(row);
    const auto rows = static_cast<size_t>(m_model.rowCount());
    if (m_heights.size() != rows || m_font != option.font) {
        m_heights.assign(rows, 0);
        m_font = option.font;
    }
    if (row != m_open && m_heights[at] > 0) return {m_width, m_heights[at]};
    const double high = lay({nullptr, m_model.at(row), row == m_open, false, QRectF(0, 0, m_width - 2 * kSide, 1e5),
                             option.font, look::coloursOf(*option.widget), nullptr});
    const int pixels = static_cast<int>(high) + 1;
    if (row != m_open) m_heights[at] = pixels;
    return {m_width, pixels};
}

} // namespace ui::board
