#include "ui/board/row_list.h"

#include "ui/board/board_delegate.h"

#include <QKeyEvent>

namespace ui::board {

RowList::RowList(desk::Desk& desk, QWidget* parent)
    : QListView(parent), m_desk(desk), m_model(new BoardModel(this)), m_delegate(new BoardDelegate(*m_model, this)) {
    setModel(m_model);
    setItemDelegate(m_delegate);
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setResizeMode(QListView::Adjust);
    viewport()->setAutoFillBackground(false);
    connect(&m_desk, &desk::Desk::chosenChanged, this, &RowList::showChosen);
    connect(this, &QListView::doubleClicked, this, &RowList::open);
}

void RowList::setRows(std::vector<BoardRow> rows) {
    m_telling = true;
    m_delegate->setOpen(-1);
    m_model->setRows(std::move(rows), &m_desk.reading().snapshot);
    m_delegate->forget();
    doItemsLayout(); // its scroll bar may come or go
    layAgain();
    m_telling = false;
    showChosen();
}

void RowList::layAgain() {
    m_delegate->setWidth(viewport()->width());
    doItemsLayout();
}

std::optional<core::ColonyId> RowList::current() const {
    const QModelIndex now = currentIndex();
    return now.isValid() ? m_model->at(now.row()).colony : std::nullopt;
}

void RowList::showChosen() {
    if (!isVisible() || m_telling) return;
    const QModelIndex now = currentIndex();
    if (now.isValid() && m_desk.chosen() && m_model->at(now.row()).about(*m_desk.chosen())) return;
    const int row = m_desk.chosen() ? m_model->rowAbout(*m_desk.chosen()) : -1;
    if (row < 0) return;
    m_telling = true;
    setCurrentIndex(m_model->index(row));
    scrollTo(m_model->index(row));
    m_telling = false;
}

void RowList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    m_delegate->setOpen(current.isValid() ? current.row() : -1);
    QListView::currentChanged(current, previous);
    scheduleDelayedItemsLayout();
    if (m_telling || !current.isValid() || !m_model->at(current.row()).colony) return;
    m_telling = true;
    m_desk.choose(*m_model->at(current.row()).colony);
    m_telling = false;
}

void RowList::open() {
    if (currentIndex().isValid()) emit rowOpened(currentIndex().row());
    if (const auto colony = current()) emit opened(*colony);
}

void RowList::keyPressEvent(QKeyEvent* event) {
    const bool plain = event->modifiers() == Qt::NoModifier || event->modifiers() == Qt::KeypadModifier;
    if (plain && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)) return open();
    if (plain && m_keys && m_keys(event->key())) return;
    QListView::keyPressEvent(event);
}

void RowList::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    layAgain();
}

void RowList::showEvent(QShowEvent* event) {
    QListView::showEvent(event);
    showChosen();
}

} // namespace ui::board
