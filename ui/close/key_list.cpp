#include "ui/close/key_list.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QResizeEvent>

namespace ui::close {

KeyList::KeyList(const QString& name, Pressed pressed, QWidget* parent)
    : QListView(parent), m_pressed(std::move(pressed)) {
    setAccessibleName(name);
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setResizeMode(QListView::Adjust);
    viewport()->setAutoFillBackground(false);
}

void KeyList::setWidthListener(std::function<void(int)> listener) { m_width = std::move(listener); }

int KeyList::row() const { return currentIndex().isValid() ? currentIndex().row() : -1; }

void KeyList::goTo(int row) {
    if (row < 0 || !model() || row >= model()->rowCount()) return;
    setCurrentIndex(model()->index(row, 0));
    scrollTo(currentIndex());
}

void KeyList::currentChanged(const QModelIndex& now, const QModelIndex& before) {
    QListView::currentChanged(now, before);
    emit rowMoved();
}

void KeyList::keyPressEvent(QKeyEvent* event) {
    const auto with = event->modifiers() & ~Qt::KeypadModifier;
    if ((with == Qt::NoModifier || with == Qt::ShiftModifier) && m_pressed(event->key())) return;
    QListView::keyPressEvent(event);
}

void KeyList::focusInEvent(QFocusEvent* event) {
    QListView::focusInEvent(event);
    if (event->reason() != Qt::ActiveWindowFocusReason && event->reason() != Qt::PopupFocusReason) emit keysCame();
}

void KeyList::resizeEvent(QResizeEvent* event) {
    if (m_width) m_width(viewport()->width());
    QListView::resizeEvent(event);
    if (event->oldSize().width() != event->size().width()) scheduleDelayedItemsLayout(); // lines break elsewhere
}

} // namespace ui::close
