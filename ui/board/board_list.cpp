#include "ui/board/board_list.h"

#include "ui/board/board_delegate.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMouseEvent>

#include <algorithm>
#include <utility>

namespace ui::board {

namespace {

using core::MergeAsk;

constexpr std::pair<Qt::Key, MergeAsk> kKeys[] = {{Qt::Key_P, MergeAsk::Pin},
                                                  {Qt::Key_N, MergeAsk::Forbid},
                                                  {Qt::Key_L, MergeAsk::LeaveOut},
                                                  {Qt::Key_H, MergeAsk::Host},
                                                  {Qt::Key_B, MergeAsk::Top}};

} // namespace

BoardList::BoardList(QWidget* parent)
    : QListView(parent), m_model(new BoardModel(this)), m_delegate(new BoardDelegate(*m_model, this)) {
    setModel(m_model);
    setItemDelegate(m_delegate);
    setAccessibleName(tr("Plan of the merge day"));
    setAccessibleDescription(tr("P pins, N forbids, L leaves out, H turns the host, B the boxes, Delete takes back"));
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setResizeMode(QListView::Adjust);
    viewport()->setAutoFillBackground(false);
    setMouseTracking(true);
    connect(selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& now) {
        if (now.isValid()) emit chosenByHand(now.row());
    });
    connect(this, &QListView::activated, this, [this](const QModelIndex& ix) {
        if (ix.isValid()) emit entered(ix.row());
    });
}

void BoardList::open(int row) {
    m_delegate->setOpen(row);
    scheduleDelayedItemsLayout(); // several changes, one laying out
}

std::optional<int> BoardList::current() const {
    const QModelIndex now = currentIndex();
    return now.isValid() ? std::optional(now.row()) : std::nullopt;
}

QRect BoardList::chipOf(int row, MergeAsk ask) const {
    const auto& offers = m_model->at(row).offers;
    for (const Chip& chip : m_delegate->chipsOf(row, visualRect(m_model->index(row)), font(), *this))
        if (offers[chip.offer].ask == ask) return chip.at.toAlignedRect();
    return {};
}

const Offer* BoardList::offerAt(const QPoint& at) const {
    const QModelIndex ix = indexAt(at);
    if (!ix.isValid() || m_model->at(ix.row()).offers.empty()) return nullptr;
    for (const Chip& chip : m_delegate->chipsOf(ix.row(), visualRect(ix), font(), *this))
        if (chip.at.contains(at)) return &m_model->at(ix.row()).offers[chip.offer];
    return nullptr;
}

bool BoardList::takeByKey(const QKeyEvent& event) {
    const auto row = current();
    if (!row || (event.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier))) return false;
    if (event.text() == QStringLiteral("?")) {
        emit whyNotAsked();
        return true;
    }
    const BoardRow& now = m_model->at(*row);
    if (event.key() == Qt::Key_Delete && now.kind == RowKind::Asked && !now.offers.empty()) {
        emit offerTaken(Offer(now.offers.front()));
        return true;
    }
    const auto* key = std::ranges::find(kKeys, static_cast<Qt::Key>(event.key()), &std::pair<Qt::Key, MergeAsk>::first);
    if (key == std::end(kKeys)) return false;
    const auto offer = std::ranges::find(now.offers, key->second, &Offer::ask);
    if (offer != now.offers.end()) emit offerTaken(Offer(*offer)); // the row is gone once it is taken
    return true;
}

void BoardList::keyPressEvent(QKeyEvent* event) {
    if (!takeByKey(*event)) QListView::keyPressEvent(event);
}

void BoardList::mousePressEvent(QMouseEvent* event) {
    const Offer* offer = event->button() == Qt::LeftButton ? offerAt(event->position().toPoint()) : nullptr;
    m_pressed = offer ? std::optional(*offer) : std::nullopt;
    if (!m_pressed) QListView::mousePressEvent(event);
}

void BoardList::mouseMoveEvent(QMouseEvent* event) {
    viewport()->setCursor(offerAt(event->position().toPoint()) ? Qt::PointingHandCursor : Qt::ArrowCursor);
    if (!m_pressed) QListView::mouseMoveEvent(event);
}

void BoardList::mouseReleaseEvent(QMouseEvent* event) {
    if (!m_pressed) return QListView::mouseReleaseEvent(event);
    const Offer* offer = offerAt(event->position().toPoint());
    const Offer pressed = *std::exchange(m_pressed, std::nullopt);
    if (offer && *offer == pressed) emit offerTaken(pressed);
}

void BoardList::contextMenuEvent(QContextMenuEvent* event) {
    if (event->reason() == QContextMenuEvent::Keyboard) {
        const int row = current().value_or(-1);
        const QRect at = row < 0 ? QRect(0, 0, 40, 40) : visualRect(m_model->index(row));
        return emit menuAsked(row, viewport()->mapToGlobal(at.topLeft() + QPoint(40, 24)));
    }
    const QModelIndex ix = indexAt(event->pos());
    emit menuAsked(ix.isValid() ? ix.row() : -1, event->globalPos());
}

void BoardList::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    m_delegate->setWidth(viewport()->width());
    scheduleDelayedItemsLayout();
}

bool BoardList::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::Resize) m_delegate->setWidth(viewport()->width()); // before rows are laid out again
    return QListView::viewportEvent(event);
}

} // namespace ui::board
