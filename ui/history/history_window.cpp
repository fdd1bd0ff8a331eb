#include "ui/history/history_window.h"

#include "ui/history/change_view.h"
#include "ui/history/filter_bar.h"
#include "ui/history/history_model.h"
#include "ui/history/history_words.h"
#include "ui/history/roomy_cells.h"
#include "ui/look/colours.h"
#include "ui/look/sheet.h"
#include "ui/look/type.h"

#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QStyle>
#include <QTableView>
#include <QVBoxLayout>

namespace ui::history {

namespace {

QLabel* wrapped(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

QTableView* listOf(HistoryModel* model, QWidget* parent) {
    auto* table = new QTableView(parent);
    table->setObjectName(QStringLiteral("historyList"));
    table->setAccessibleName(HistoryWindow::tr("Changes of the book, newest first"));
    table->setModel(model);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->setItemDelegate(new RoomyCells(table));
    table->setWordWrap(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 10);
    QHeaderView* header = table->horizontalHeader();
    header->setHighlightSections(false);
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    header->setSectionResizeMode(static_cast<int>(Column::What), QHeaderView::Stretch);
    const int letter = table->fontMetrics().averageCharWidth();
    header->resizeSection(static_cast<int>(Column::When), letter * 23);
    header->resizeSection(static_cast<int>(Column::By), letter * 16);
    header->resizeSection(static_cast<int>(Column::Note), letter * 34);
    return table;
}

} // namespace

HistoryWindow::HistoryWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_desk(desk),
      m_dialogs(dialogs),
      m_model(new HistoryModel(desk.session(), dialogs, this)),
      m_filter(new FilterBar(desk.session(), dialogs, this)),
      m_table(nullptr),
      m_changes(new ChangeView(this)),
      m_title(wrapped(this)),
      m_lesser(wrapped(this)),
      m_count(new QLabel(this)),
      m_saying(wrapped(this)),
      m_takeBack(new QPushButton(tr("&Take back this change"), this)) {
    setWindowTitle(tr("History – %1").arg(desk.session().bookTitle()));
    resize(1060, 720);
    look::keepDressed(*this, [this] { m_model->setQuiet(look::coloursOf(*this).quiet); });
    build();
    connect(m_filter, &FilterBar::changed, this, &HistoryWindow::applyFilter);
    connect(m_model, &HistoryModel::looked, this, &HistoryWindow::sayHowMany);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &HistoryWindow::showChosen);
    connect(m_takeBack, &QPushButton::clicked, this, &HistoryWindow::takeBack);
    connect(&m_desk, &desk::Desk::read, this, &HistoryWindow::follow);
    const auto key = [this](QKeySequence::StandardKey keys, auto work) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this,
                [this, work] { guarded(m_dialogs, [this, work] { work(m_desk); }); });
    };
    key(QKeySequence::Undo, [](desk::Desk& d) { d.undo(); });
    key(QKeySequence::Redo, [](desk::Desk& d) { d.redo(); });
    guarded(m_dialogs, [this] { m_filter->offer(); });
    sayHowMany();
    if (m_model->rowCount() > 0) m_table->selectRow(0);
    showChosen();
}

void HistoryWindow::build() {
    m_table = listOf(m_model, this);
    m_model->setQuiet(look::coloursOf(*this).quiet);
    auto* split = new QSplitter(Qt::Vertical, this);
    split->setChildrenCollapsible(false);
    split->addWidget(m_table);
    split->addWidget(detailPart());
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addWidget(m_filter);
    down->addWidget(split, 1);
    QWidget::setTabOrder(m_filter->lastPart(), m_table);
    QWidget::setTabOrder(m_table, m_changes);
    QWidget::setTabOrder(m_changes, m_takeBack);
}

QWidget* HistoryWindow::detailPart() {
    auto* part = new QWidget(this);
    auto* down = new QVBoxLayout(part);
    down->setContentsMargins(14, 10, 14, 10);
    down->setSpacing(4);
    QFont bold = font();
    bold.setBold(true);
    m_title->setFont(bold);
    m_lesser->setProperty("quiet", true);
    down->addWidget(m_title);
    down->addWidget(m_lesser);
    down->addWidget(m_changes, 1);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(12);
    m_count->setProperty("quiet", true);
    m_saying->setObjectName(QStringLiteral("historySaying"));
    m_takeBack->setAccessibleName(tr("Take back this change"));
    m_takeBack->setObjectName(QStringLiteral("takeBackChange"));
    foot->addWidget(m_count);
    foot->addWidget(m_saying, 1);
    foot->addWidget(m_takeBack);
    down->addSpacing(4);
    down->addLayout(foot);
    return part;
}

std::optional<qint64> HistoryWindow::chosen() const {
    const QModelIndex at = m_table->currentIndex();
    return at.isValid() ? std::optional(m_model->lineAt(at.row()).seq) : std::nullopt;
}

void HistoryWindow::follow() {
    m_stale = !isVisible();
    if (m_stale) return;
    m_model->refresh();
    guarded(m_dialogs, [this] { m_filter->offer(); });
    showChosen();
}

void HistoryWindow::applyFilter() {
    guarded(m_dialogs, [this] {
        const auto before = chosen();
        m_model->setFilter(m_filter->filter());
        const int row = before ? m_model->rowOf(*before).value_or(0) : 0;
        if (row < m_model->rowCount()) m_table->selectRow(row);
        sayHowMany();
        showChosen();
    });
}

void HistoryWindow::showChosen() {
    guarded(m_dialogs, [this] {
        const auto seq = chosen();
        const auto detail = seq ? m_desk.session().historyDetail(*seq) : std::nullopt;
        m_changes->setVisible(detail.has_value());
        m_title->setText(detail ? detail->line.text : tr("Choose a change to see what it did."));
        QStringList lesser;
        if (detail) {
            lesser << whenText(detail->line.at, m_desk.session().clock().nowUtc());
            if (!detail->line.by.isEmpty()) lesser << tr("by %1").arg(detail->line.by);
            if (const QString note = noteText(detail->line); !note.isEmpty()) lesser << note;
        }
        m_lesser->setText(lesser.join(QStringLiteral(" · ")));
        if (detail)
            m_changes->show(*detail);
        else
            m_changes->clear();
        const auto barred = seq ? m_desk.session().takeBackBarred(*seq) : std::optional(tr("No change is chosen."));
        m_takeBack->setEnabled(!barred);
        m_takeBack->setToolTip(barred.value_or(
            tr("The change is taken back as a new line of the history, where nothing later rests on it")));
        say(seq ? barred.value_or(QString()) : QString(), false);
    });
}

void HistoryWindow::takeBack() {
    const auto seq = chosen();
    if (!seq) return;
    guarded(m_dialogs, [&] {
        m_table->setFocus(); // the button is of no more use for this line
        try {
            m_desk.takeBack(*seq, m_model->lineAt(m_table->currentIndex().row()).text);
        } catch (const core::Error& e) {
            if (e.kind() != core::Error::Kind::BadData) throw;
            m_takeBack->setFocus();
            say(e.userMessage(), true);
        }
    });
}

void HistoryWindow::say(const QString& sentence, bool warns) {
    m_saying->setProperty("warns", warns);
    m_saying->setProperty("quiet", !warns);
    m_saying->style()->polish(m_saying);
    m_saying->setText(sentence);
    m_saying->setAccessibleName(sentence);
}

QString HistoryWindow::said() const { return m_saying->text(); }

void HistoryWindow::sayHowMany() {
    const int rows = m_model->rowCount();
    const bool all = m_model->filter() == core::edit::HistoryFilter();
    QString text;
    if (m_model->looking())
        text = tr("Looking through older changes…");
    else if (rows == 0)
        text = all ? tr("Nothing was done yet.") : tr("No change fits.");
    m_count->setText(text);
    m_count->setVisible(!text.isEmpty());
    if (!m_table->currentIndex().isValid() && rows > 0) m_table->selectRow(0);
}

void HistoryWindow::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) follow();
}

void HistoryWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        close();
        return;
    }
    QWidget::keyPressEvent(event);
}

/// Follows the system when it turns dark or its text larger.
HistoryWindow* showHistory(desk::Desk& desk, Dialogs& dialogs, QWidget* page) {
    auto* window = page->findChild<HistoryWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!window) window = new HistoryWindow(desk, dialogs, page);
    window->show();
    window->raise();
    window->activateWindow();
    window->table()->setFocus();
    return window;
}

} // namespace ui::history
