#include "ui/board/board.h"

#include "ui/board/board_delegate.h"
#include "ui/card/card_whys.h"
#include "ui/look/reason_text.h"
#include "ui/look/type.h"

#include <QDateEdit>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::board {

Board::Board(QWidget* parent)
    : QWidget(parent),
      m_model(new BoardModel(this)),
      m_delegate(new BoardDelegate(*m_model, this)),
      m_list(new QListView(this)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(6);
    buildHead();
    m_list->setModel(m_model);
    m_list->setItemDelegate(m_delegate);
    m_list->setAccessibleName(tr("Plan of the merge day"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setResizeMode(QListView::Adjust);
    m_list->viewport()->setAutoFillBackground(false);
    m_list->viewport()->installEventFilter(this);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &Board::rowChosen);
    connect(m_list, &QListView::activated, this, [this](const QModelIndex& ix) {
        if (ix.isValid() && m_model->at(ix.row()).colony) emit opened(*m_model->at(ix.row()).colony);
    });
    all->addWidget(m_list, 1);
    buildFoot();
}

void Board::buildHead() {
    auto* all = static_cast<QVBoxLayout*>(layout());
    auto* line = new QHBoxLayout;
    line->setContentsMargins(20, 0, 20, 0);
    auto* title = new QLabel(tr("Merge day"), this);
    title->setFont(look::headingFont(font()));
    line->addWidget(title, 1);
    m_day = new QDateEdit(this);
    m_day->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    m_day->setCalendarPopup(true);
    m_day->setAccessibleName(tr("Day of the merge day"));
    m_day->setObjectName(QStringLiteral("mergeDay"));
    m_day->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("30 Sept 2026")) + 58); // with its arrow
    connect(m_day, &QDateEdit::dateChanged, this, [this](QDate date) {
        if (!m_telling && date.isValid()) emit dayAsked(core::dayOf(date));
    });
    line->addWidget(m_day);
    all->addLayout(line);
    m_where = new QLabel(this);
    m_where->setProperty("quiet", true);
    m_where->setContentsMargins(20, 0, 20, 0);
    all->addWidget(m_where);
    m_expected = new QLabel(this);
    m_expected->setProperty("quiet", true);
    m_expected->setWordWrap(true);
    m_expected->setContentsMargins(20, 0, 20, 0);
    all->addWidget(m_expected);
}

void Board::buildFoot() {
    auto* all = static_cast<QVBoxLayout*>(layout());
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(20, 6, 20, 0);
    m_asUnited = new QLabel(tr("As united"), this);
    m_asUnited->setProperty("quiet", true);
    foot->addWidget(m_asUnited);
    m_side = new card::ElevationView(this);
    foot->addWidget(m_side);
    auto* buttons = new QHBoxLayout;
    auto* preview = new QPushButton(tr("Pre&view"), this);
    auto* pdf = new QPushButton(tr("P&DF…"), this);
    m_print = new QPushButton(tr("&Print worksheet"), this);
    m_print->setProperty("primary", true);
    connect(preview, &QPushButton::clicked, this, &Board::previewAsked);
    connect(pdf, &QPushButton::clicked, this, &Board::pdfAsked);
    connect(m_print, &QPushButton::clicked, this, &Board::printAsked);
    buttons->addWidget(preview);
    buttons->addWidget(pdf);
    buttons->addStretch(1);
    buttons->addWidget(m_print);
    foot->addLayout(buttons);
    all->addLayout(foot);
}

void Board::show(const desk::Reading& reading, core::YardIx yard) {
    m_telling = true;
    m_reading = &reading;
    m_yard = yard;
    m_delegate->setOpen(-1);
    m_model->setRows(boardRows(reading, yard), &reading.snapshot);
    m_day->setDate(core::toDate(reading.snapshot.on));
    m_where->setText(reading.snapshot.yard(yard).name);
    const QString expected = expectedText(reading, yard);
    m_expected->setText(expected);
    m_expected->setVisible(!expected.isEmpty());
    open(-1);
    m_telling = false;
}

void Board::setChosen(std::optional<core::ColonyId> colony) {
    const int row = colony ? m_model->rowAbout(*colony) : -1;
    const QModelIndex now = m_list->currentIndex();
    if (colony && now.isValid() && m_model->at(now.row()).about(*colony)) return open(now.row());
    m_telling = true;
    open(row);
    m_list->setCurrentIndex(row < 0 ? QModelIndex() : m_model->index(row));
    if (row < 0) m_list->clearSelection();
    if (row >= 0) m_list->scrollTo(m_model->index(row));
    m_telling = false;
}

/// Rule and limits; and what was given up, worked out only for the one that is looked at: a matching of its yard.
void Board::unfold(int row) {
    if (row < 0 || !m_reading) return;
    const BoardRow& opened = m_model->at(row);
    if (!opened.rules.isEmpty() || !opened.colony || opened.why.rule[0] == 0) return;
    const auto ix = opened.atRisk ? m_reading->find(*opened.colony) : std::nullopt;
    m_model->unfold(row, look::rulesText(m_reading->snapshot, opened.why),
                    ix ? card::givenUpText(*m_reading, *ix) : QString());
}

void Board::open(int row) {
    unfold(row);
    m_delegate->setOpen(row);
    const core::rules::Union* united = nullptr;
    if (row >= 0 && m_reading && m_model->at(row).kind == RowKind::Union)
        if (const auto ix = m_reading->find(*m_model->at(row).colony)) united = m_reading->unionOf(*ix);
    m_asUnited->setVisible(united);
    m_side->setVisible(united);
    if (united) m_side->setSide(card::unitedSideOf(*m_reading, *united));
    m_list->doItemsLayout();
}

void Board::rowChosen(const QModelIndex& index) {
    if (m_telling || !index.isValid() || !m_model->at(index.row()).colony) return;
    open(index.row());
    emit chosen(m_model->at(index.row()).colony);
}

void Board::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_delegate->setWidth(m_list->viewport()->width());
    m_list->doItemsLayout();
}

bool Board::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_list->viewport() && event->type() == QEvent::Resize)
        m_delegate->setWidth(m_list->viewport()->width()); // before the list lays its rows out again
    return QWidget::eventFilter(watched, event);
}

} // namespace ui::board
