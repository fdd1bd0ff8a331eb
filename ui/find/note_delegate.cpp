#include "ui/find/note_delegate.h"

#include "ui/find/note_model.h"
#include "ui/look/colours.h"

#include <QListView>
#include <QPainter>
#include <QTextLayout>

#include <algorithm>

namespace ui::find {

namespace {

constexpr double kBesideNote = 10;
constexpr double kAboveNote = 5;

QFont heavy(const QFont& font) {
    QFont bold = font;
    bold.setBold(true);
    return bold;
}

/// Lays the words out from the layout's own origin; returns how high they are.
double layWords(QTextLayout& layout, const QModelIndex& index, double wide) {
    QList<QTextLayout::FormatRange> marked;
    for (const core::TextMark& mark : marksOf(index)) {
        QTextLayout::FormatRange range;
        range.start = static_cast<int>(mark.from);
        range.length = static_cast<int>(mark.length);
        range.format.setFontWeight(QFont::Bold);
        range.format.setFontUnderline(true);
        marked << range;
    }
    layout.setFormats(marked);
    layout.beginLayout();
    double y = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(wide);
        line.setPosition({0, y});
        y += line.height();
    }
    layout.endLayout();
    return y;
}

double roomIn(const QStyleOptionViewItem& option) {
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    return std::max(60.0, (view ? view->viewport()->width() : option.rect.width()) - 2 * kBesideNote);
}

/// One line for each that the note has.
QString linesOf(const QModelIndex& index) {
    return index.data(Qt::DisplayRole).toString().replace(u'\n', QChar::LineSeparator);
}

} // namespace

void NoteDelegate::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const look::Colours c = look::coloursOf(*option.widget);
    p->save();
    p->setRenderHint(QPainter::Antialiasing, true);
    if (option.state & QStyle::State_Selected) {
        const bool focus = option.widget->hasFocus();
        p->setPen(QPen(focus ? c.planned : c.rule, focus ? 2 : 1));
        p->setBrush(c.paper);
        p->drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -1), 4, 4);
    }
    const double line = QFontMetricsF(heavy(option.font)).height();
    const QRectF head(option.rect.left() + kBesideNote, option.rect.top() + kAboveNote, roomIn(option), line);
    const QString day = index.data(NoteModel::DayRole).toString();
    p->setPen(c.quiet);
    p->setFont(option.font);
    p->drawText(head, Qt::AlignRight | Qt::AlignVCenter, day);
    const QFontMetricsF bold(heavy(option.font));
    const double left = head.width() - QFontMetricsF(option.font).horizontalAdvance(day) - 8;
    p->setPen(c.ink);
    p->setFont(heavy(option.font));
    p->drawText(head, Qt::AlignLeft | Qt::AlignVCenter,
                bold.elidedText(index.data(NoteModel::TitleRole).toString(), Qt::ElideRight, left));
    QTextLayout words(linesOf(index), option.font);
    layWords(words, index, head.width());
    words.draw(p, head.bottomLeft());
    p->restore();
}

QSize NoteDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QTextLayout words(linesOf(index), option.font);
    const double high = layWords(words, index, roomIn(option));
    const double line = QFontMetricsF(heavy(option.font)).height();
    return {static_cast<int>(roomIn(option)), static_cast<int>(line + high + 2 * kAboveNote) + 1};
}

} // namespace ui::find
