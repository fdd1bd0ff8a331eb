#include "ui/entry/entry_delegate.h"

#include "ui/entry/entry_model.h"
#include "ui/look/colours.h"
#include "ui/look/type.h"

#include <QAbstractItemView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QScopedValueRollback>

namespace ui::entry {

namespace {

constexpr int kIn = 6; // pixels beside a text

RowState stateOf(const QModelIndex& index) { return static_cast<RowState>(index.data(EntryModel::StateRole).toInt()); }

bool isNote(const QModelIndex& index) {
    const auto* model = qobject_cast<const EntryModel*>(index.model());
    return model && model->columnAt(index.column()) == core::TallyColumn::Note;
}

/// Told by shape as well as by colour.
QString signOf(RowState state) {
    switch (state) {
    case RowState::Blank:
        return {};
    case RowState::Typed:
        return QStringLiteral("…");
    case RowState::Wrong:
        return QStringLiteral("!");
    case RowState::Saved:
        return QStringLiteral("✓");
    }
    return {};
}

QColor inkOf(RowState state, const look::Colours& c) {
    switch (state) {
    case RowState::Typed:
        return c.planned;
    case RowState::Wrong:
        return c.warnText;
    case RowState::Saved:
        return c.grows;
    case RowState::Blank:
        break;
    }
    return c.ink;
}

QRect lastRect(const QStyleOptionViewItem& option, const QString& last) {
    const int width = QFontMetrics(look::lesserFont(option.font)).horizontalAdvance(last);
    QRect r = option.rect.adjusted(kIn, 0, -kIn, 0);
    r.setLeft(std::max(r.left(), r.right() - width));
    return r;
}

} // namespace

EntryDelegate::EntryDelegate(Pressed pressed, QObject* parent)
    : QStyledItemDelegate(parent), m_pressed(std::move(pressed)) {}

void EntryDelegate::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const look::Colours c = look::coloursOf(*option.widget);
    const RowState state = stateOf(index);
    const bool label = index.column() == 0;
    p->fillRect(option.rect, option.state & QStyle::State_Selected ? c.chosen : c.paper);
    p->setPen(c.rule);
    p->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    QString last = index.data(EntryModel::LastRole).toString();
    const QRect lastAt = lastRect(option, last);
    QFont typedFont = option.font;
    typedFont.setBold(label || state == RowState::Typed || state == RowState::Wrong);
    const int typedWidth = QFontMetrics(typedFont).horizontalAdvance(index.data().toString());
    if (!label && option.rect.left() + kIn + typedWidth + 2 > lastAt.left()) last.clear(); // what is typed goes first
    if (!last.isEmpty()) {
        p->setFont(look::lesserFont(option.font));
        p->setPen(c.quiet);
        p->drawText(lastAt, Qt::AlignRight | Qt::AlignVCenter, last);
    }
    p->setFont(typedFont);
    QRect room = option.rect.adjusted(kIn, 0, -kIn, 0);
    if (!last.isEmpty()) room.setRight(lastAt.left() - 2);
    if (label) {
        p->setPen(inkOf(state, c));
        p->drawText(room, Qt::AlignRight | Qt::AlignVCenter, signOf(state));
        room.setRight(room.right() - QFontMetrics(typedFont).horizontalAdvance(u'…') - 4);
    }
    const bool wrong = !index.data(EntryModel::ProblemRole).toString().isEmpty();
    p->setPen(wrong ? c.warnText : c.ink);
    const QString text = QFontMetrics(typedFont).elidedText(index.data().toString(), Qt::ElideRight, room.width());
    p->drawText(room, Qt::AlignLeft | Qt::AlignVCenter, text);
    if (wrong) {
        p->setPen(QPen(c.warn, 2));
        p->drawRect(option.rect.adjusted(1, 1, -2, -2));
    }
}

QSize EntryDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {option.fontMetrics.horizontalAdvance(u'0') * 6, option.fontMetrics.height() + 10};
}

QWidget* EntryDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
    auto* line = new QLineEdit(parent);
    line->setAccessibleName(index.data(EntryModel::SpokenRole).toString());
    line->setObjectName(QStringLiteral("entryLine"));
    line->setTextMargins(0, 0, 0, 0);
    const QPersistentModelIndex at(index);
    connect(line, &QLineEdit::textEdited, this, [this, at](const QString& text) {
        const QScopedValueRollback typing(m_typing, true);
        if (at.isValid()) const_cast<QAbstractItemModel*>(at.model())->setData(at, text);
    });
    connect(line, &QLineEdit::textChanged, this, [this, line, at] {
        const auto* view = qobject_cast<QAbstractItemView*>(this->parent());
        if (!view || !at.isValid()) return;
        QStyleOptionViewItem option;
        option.font = view->font();
        option.rect = view->visualRect(at);
        updateEditorGeometry(line, option, at);
    });
    return line;
}

void EntryDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    if (m_typing) return;
    auto* line = static_cast<QLineEdit*>(editor);
    const QString text = index.data(Qt::EditRole).toString();
    if (line->text() == text && line->property("begun").toBool()) return;
    line->setText(text);
    if (line->property("begun").toBool()) return;
    line->setProperty("begun", true);
    line->setProperty("start", text);
    if (isNote(index)) // typing goes on behind what is there
        line->end(false);
    else
        line->selectAll();
}

void EntryDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                         const QModelIndex& index) const {
    constexpr int kFrame = 12; // about the text and the caret
    const QString last = index.data(EntryModel::LastRole).toString();
    QRect r = option.rect;
    if (!last.isEmpty()) r.setRight(std::max(r.left() + r.width() / 2, lastRect(option, last).left() - 3));
    const int needed = editor->fontMetrics().horizontalAdvance(static_cast<QLineEdit*>(editor)->text()) + kFrame;
    if (needed > r.width()) r = option.rect; // what is typed goes before what stood there
    editor->setGeometry(r);
}

bool EntryDelegate::eventFilter(QObject* watched, QEvent* event) {
    auto* line = qobject_cast<QLineEdit*>(watched);
    if (!line) return false;
    if (event->type() == QEvent::ShortcutOverride) { // with nothing typed in it, undo is the book's
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool undo = key->matches(QKeySequence::Undo) && !line->isUndoAvailable();
        const bool redo = key->matches(QKeySequence::Redo) && !line->isRedoAvailable();
        if (undo || redo) {
            event->ignore();
            return true;
        }
    }
    return event->type() == QEvent::KeyPress && m_pressed(*line, *static_cast<QKeyEvent*>(event));
}

} // namespace ui::entry
