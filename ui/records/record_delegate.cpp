#include "ui/records/record_delegate.h"

#include "ui/look/colours.h"
#include "ui/look/type.h"
#include "ui/records/record_model.h"

#include <QListView>
#include <QPainter>

#include <algorithm>

namespace ui::records {

namespace {

constexpr double kSide = 8;
constexpr double kAbove = 4;
constexpr double kMost = 1e5;

QFont boldOf(const QFont& font) {
    QFont bold = font;
    bold.setBold(true);
    return bold;
}

/// The title may be broken where the day needs its room.
struct Parts {
    QRectF day, title, words;
    double bottom = 0;
};

Parts partsOf(const QRectF& area, const QModelIndex& index, const QFont& font) {
    Parts out;
    const QFontMetricsF lesser(look::lesserFont(font));
    const double wide = lesser.horizontalAdvance(index.data(RecordModel::DayRole).toString()) + 4;
    const double x = area.left() + kSide;
    const double room = std::max(area.width() - 2 * kSide, 60.0);
    const auto measured = [](const QFontMetricsF& m, const QRectF& in, const QString& text) {
        return text.isEmpty() ? QRectF(in.topLeft(), QSizeF(0, 0)) : m.boundingRect(in, Qt::TextWordWrap, text);
    };
    const QRectF left(x, area.top() + kAbove, std::max(room - wide - 8, 40.0), kMost);
    out.title = measured(QFontMetricsF(boldOf(font)), left, index.data(RecordModel::TitleRole).toString());
    out.day = QRectF(x + room - wide, area.top() + kAbove, wide, QFontMetricsF(font).height());
    const QRectF below(x, std::max(out.title.bottom(), out.day.bottom()), room, kMost);
    out.words = measured(lesser, below, index.data(RecordModel::WordsRole).toString());
    out.bottom = std::max(below.top(), out.words.bottom()) + kAbove;
    out.title.setWidth(left.width());
    out.words.setWidth(room);
    return out;
}

} // namespace

void RecordDelegate::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const look::Colours c = look::coloursOf(*option.widget);
    const Parts parts = partsOf(QRectF(option.rect), index, option.font);
    p->save();
    p->setRenderHint(QPainter::Antialiasing, true);
    if (option.state & QStyle::State_Selected) {
        const bool focus = option.widget->hasFocus();
        p->setPen(QPen(focus ? c.planned : c.rule, focus ? 2 : 1));
        p->setBrush(c.paper);
        p->drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -1), 4, 4);
    }
    p->setFont(boldOf(option.font));
    p->setPen(c.ink);
    p->drawText(parts.title, Qt::TextWordWrap, index.data(RecordModel::TitleRole).toString());
    p->setFont(look::lesserFont(option.font));
    p->setPen(c.quiet);
    p->drawText(parts.day, Qt::AlignRight | Qt::AlignVCenter, index.data(RecordModel::DayRole).toString());
    p->setPen(c.ink);
    p->drawText(parts.words, Qt::TextWordWrap, index.data(RecordModel::WordsRole).toString());
    p->restore();
}

QSize RecordDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const int wide = view ? view->viewport()->width() : option.rect.width();
    const Parts parts = partsOf(QRectF(0, 0, wide, kMost), index, option.font);
    return {wide, static_cast<int>(parts.bottom) + 1};
}

} // namespace ui::records
