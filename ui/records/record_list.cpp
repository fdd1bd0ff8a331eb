#include "ui/records/record_list.h"

#include "ui/records/record_delegate.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::records {

namespace {
constexpr int kLinesAtLeast = 11;
} // namespace

RecordList::RecordList(QWidget* parent)
    : QWidget(parent),
      m_model(new RecordModel(this)),
      m_list(new QListView(this)),
      m_open(new QPushButton(tr("&Open"), this)),
      m_takeBack(new QPushButton(tr("Ta&ke back"), this)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(4);
    auto* head = new QHBoxLayout;
    auto* title = new QLabel(tr("Re&cords"), this);
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    title->setBuddy(m_list);
    head->addWidget(title, 1);
    head->addWidget(m_open);
    head->addWidget(m_takeBack);
    all->addLayout(head);
    m_open->setObjectName(QStringLiteral("openRecord"));
    m_takeBack->setObjectName(QStringLiteral("takeBackRecord"));
    m_open->setProperty("plain", true);
    m_takeBack->setProperty("plain", true);
    m_open->setToolTip(tr("Enter"));
    m_takeBack->setToolTip(tr("Delete"));
    m_list->setObjectName(QStringLiteral("records"));
    m_list->setModel(m_model);
    m_list->setItemDelegate(new RecordDelegate(m_list));
    m_list->setAccessibleName(tr("Records of the colony"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setResizeMode(QListView::Adjust);
    m_list->viewport()->setAutoFillBackground(false);
    m_list->setMinimumHeight(fontMetrics().lineSpacing() * kLinesAtLeast);
    all->addWidget(m_list, 1);
    connect(m_list, &QListView::activated, this, &RecordList::open);
    connect(m_open, &QPushButton::clicked, this, &RecordList::open);
    connect(m_takeBack, &QPushButton::clicked, this, &RecordList::takeBack);
    auto* erase = new QShortcut(QKeySequence::Delete, m_list);
    erase->setContext(Qt::WidgetShortcut);
    connect(erase, &QShortcut::activated, this, &RecordList::takeBack);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &RecordList::settle);
    settle();
}

void RecordList::show(core::ColonyId colony, std::vector<RecordRow> rows) {
    if (m_colony != colony) m_list->setCurrentIndex({});
    m_colony = colony;
    const QModelIndex now = m_list->currentIndex();
    const auto chosen = now.isValid() ? std::optional(m_model->at(now.row())) : std::nullopt;
    m_model->setRows(std::move(rows));
    if (chosen)
        for (int i = 0; i < m_model->rowCount(); ++i)
            if (m_model->at(i).kind == chosen->kind && m_model->at(i).id == chosen->id)
                m_list->setCurrentIndex(m_model->index(i));
    if (chosen && !m_list->currentIndex().isValid() && m_model->rowCount() > 0) // it is gone: its neighbour
        m_list->setCurrentIndex(m_model->index(std::min(now.row(), m_model->rowCount() - 1)));
    settle();
}

void RecordList::choose(RecordKind kind, qint64 id) {
    for (int i = 0; i < m_model->rowCount(); ++i) {
        if (m_model->at(i).kind != kind || m_model->at(i).id != id) continue;
        m_list->setCurrentIndex(m_model->index(i));
        m_list->scrollTo(m_model->index(i));
        m_list->setFocus(Qt::OtherFocusReason);
    }
}

void RecordList::setWritable(bool writable) {
    m_writable = writable;
    settle();
}

void RecordList::settle() {
    const bool any = m_list->currentIndex().isValid();
    m_open->setEnabled(any);
    m_takeBack->setEnabled(any && m_writable);
}

void RecordList::open() {
    const QModelIndex now = m_list->currentIndex();
    if (now.isValid()) emit openAsked(RecordRow(m_model->at(now.row())));
}

void RecordList::takeBack() {
    const QModelIndex now = m_list->currentIndex();
    if (now.isValid() && m_writable) emit takeBackAsked(RecordRow(m_model->at(now.row())));
}

} // namespace ui::records
