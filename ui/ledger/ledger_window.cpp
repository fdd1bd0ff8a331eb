#include "ui/ledger/ledger_window.h"

#include "core/exchange/csv_writer.h"
#include "core/report/ledger_table.h"
#include "ui/look/sheet.h"
#include "ui/print/book_origin.h"
#include "ui/print/ledger_paper.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

#include <algorithm>

namespace ui::ledger {

namespace report = core::report;
namespace rules = core::rules;

namespace {

constexpr int kAllYards = -1;

QLabel* wrapped(QWidget* parent, const QString& name, bool quiet) {
    auto* label = new QLabel(parent);
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    if (quiet) label->setProperty("quiet", true);
    return label;
}

QPushButton* button(QWidget* parent, const QString& text, const QString& name, const QString& tip) {
    auto* made = new QPushButton(text, parent);
    made->setObjectName(name);
    made->setAccessibleName(QString(text).remove(u'&'));
    made->setToolTip(tip);
    return made;
}

} // namespace

LedgerWindow::LedgerWindow(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_desk(desk),
      m_dialogs(dialogs),
      m_yards(new QComboBox(this)),
      m_table(new QTableWidget(this)),
      m_sentences(wrapped(this, QStringLiteral("ledgerSentences"), false)),
      m_key(wrapped(this, QStringLiteral("ledgerKey"), true)),
      m_said(wrapped(this, QStringLiteral("ledgerSaid"), true)),
      m_pdf(button(this, tr("As &PDF…"), QStringLiteral("ledgerPdf"), tr("The years shown, as pages to print"))),
      m_csv(button(this, tr("As &CSV…"), QStringLiteral("ledgerCsv"), tr("The years shown, for a spreadsheet"))) {
    setWindowTitle(tr("Ledger of colonies – %1").arg(desk.session().bookTitle()));
    resize(1220, 700);
    look::keepDressed(*this, [this] { showTable(); });
    build();
    connect(&m_desk, &desk::Desk::read, this, &LedgerWindow::follow);
    connect(m_yards, &QComboBox::currentIndexChanged, this, &LedgerWindow::showTable);
    connect(m_table, &QTableWidget::currentCellChanged, this, &LedgerWindow::showSentences);
    connect(m_pdf, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { writePdf(); }); });
    connect(m_csv, &QPushButton::clicked, this, [this] { guarded(m_dialogs, [this] { writeCsv(); }); });
    m_stale = true;
}

void LedgerWindow::build() {
    m_yards->setObjectName(QStringLiteral("ledgerYards"));
    m_yards->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_yards->setMinimumContentsLength(16);
    m_yards->setAccessibleName(tr("Yards of the ledger"));
    m_table->setObjectName(QStringLiteral("ledgerTable"));
    m_table->setAccessibleName(tr("Ledger of colonies, a row a season"));
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setHighlightSections(false);
    auto* head = new QHBoxLayout;
    head->addWidget(m_yards);
    head->addStretch(1);
    head->addWidget(m_pdf);
    head->addWidget(m_csv);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(14, 12, 14, 12);
    down->setSpacing(8);
    down->addLayout(head);
    down->addWidget(m_table, 1);
    down->addWidget(m_sentences);
    down->addWidget(m_key);
    down->addWidget(m_said);
    for (const auto& [one, other] : {std::pair<QWidget*, QWidget*>{m_yards, m_pdf}, {m_pdf, m_csv}, {m_csv, m_table}})
        QWidget::setTabOrder(one, other);
}

void LedgerWindow::follow() {
    m_stale = !isVisible();
    if (m_stale) return;
    guarded(m_dialogs, [this] {
        m_snapshot = m_desk.session().snapshot(m_desk.today());
        m_years = rules::ledger(m_snapshot);
        const QVariant was = m_yards->currentData();
        const QSignalBlocker quiet(m_yards);
        m_yards->clear();
        m_yards->addItem(tr("All yards"), kAllYards);
        for (size_t i = 0; i < m_snapshot.yards.size(); ++i)
            m_yards->addItem(m_snapshot.yards[i].name, static_cast<int>(i));
        m_yards->setCurrentIndex(std::max(0, m_yards->findData(was)));
        m_key->setText(report::ledgerKey(m_snapshot.settings));
        fitLabels();
        showTable();
    });
}

/// All yards together where several are shown, then each; the newest year first.
std::vector<rules::LedgerYear> LedgerWindow::shownYears() const {
    const int yard = m_yards->currentData().toInt();
    std::vector<rules::LedgerYear> out;
    for (const rules::LedgerYear& year : m_years)
        if (yard == kAllYards || (year.yard && year.yard->value == yard)) out.push_back(year);
    std::ranges::stable_sort(out, [](const rules::LedgerYear& a, const rules::LedgerYear& b) {
        if (a.yard.has_value() != b.yard.has_value()) return !a.yard.has_value();
        if (a.yard != b.yard) return *a.yard < *b.yard;
        return a.year > b.year;
    });
    return out;
}

void LedgerWindow::showTable() {
    const auto years = shownYears();
    const QStringList columns = report::ledgerColumns();
    const auto rows = report::ledgerRows(m_snapshot, years);
    const QSignalBlocker quiet(m_table);
    m_yearOfRow.clear();
    m_table->setColumnCount(static_cast<int>(columns.size()));
    m_table->setHorizontalHeaderLabels(columns);
    m_table->setRowCount(static_cast<int>(rows.size()));
    for (int r = 0; r < m_table->rowCount(); ++r) {
        const report::LedgerRow& row = rows[static_cast<size_t>(r)];
        m_yearOfRow.push_back(row.year);
        for (int c = 0; c < m_table->columnCount(); ++c) {
            auto* item = new QTableWidgetItem(row.cells[c]);
            if (c >= 5) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            item->setData(Qt::AccessibleTextRole,
                          tr("%1: %2").arg(columns[c], row.cells[c].isEmpty() ? QStringLiteral("0") : row.cells[c]));
            QFont bold = m_table->font();
            bold.setBold(c == 5 || c + 1 == m_table->columnCount());
            item->setFont(bold);
            m_table->setItem(r, c, item);
        }
    }
    m_table->resizeColumnsToContents();
    if (m_table->rowCount() > 0) m_table->setCurrentCell(0, 0);
    showSentences();
}

void LedgerWindow::showSentences() {
    const int row = m_table->currentRow();
    if (row < 0 || static_cast<size_t>(row) >= m_yearOfRow.size())
        return m_sentences->setText(tr("No colony is in the book yet."));
    const auto years = shownYears();
    m_sentences->setText(report::ledgerSentences(m_snapshot, years[m_yearOfRow[static_cast<size_t>(row)]]).join(u'\n'));
    fitLabels();
}

void LedgerWindow::writePdf() {
    const auto path =
        m_dialogs.fileToWrite(tr("Ledger as PDF"), tr("%1, ledger.pdf").arg(m_desk.session().bookTitle()));
    if (!path) return;
    print::writeLedgerPdf(m_snapshot, shownYears(), print::originOf(m_desk.session()), *path);
    m_said->setText(tr("The ledger is in %1.").arg(*path));
}

void LedgerWindow::writeCsv() {
    const auto path =
        m_dialogs.fileToWrite(tr("Ledger as CSV"), tr("%1, ledger.csv").arg(m_desk.session().bookTitle()));
    if (!path) return;
    const QFileInfo file(*path);
    core::exchange::CsvWriter writer(file.absolutePath(), file.fileName());
    writer.row(report::ledgerFileColumns());
    for (const report::LedgerRow& row : report::ledgerRows(m_snapshot, shownYears(), true)) writer.row(row.cells);
    writer.commit();
    m_said->setText(tr("The ledger is in %1.").arg(*path));
}

void LedgerWindow::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) follow();
}

/// A wrapped label is not asked for its height.
void LedgerWindow::fitLabels() {
    for (QLabel* label : {m_sentences, m_key})
        label->setMinimumHeight(std::max(0, label->heightForWidth(std::max(width() - 28, 200))));
}

void LedgerWindow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitLabels();
}

void LedgerWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        close();
        return;
    }
    QWidget::keyPressEvent(event);
}

LedgerWindow* showLedger(desk::Desk& desk, Dialogs& dialogs, QWidget* page) {
    auto* window = page->findChild<LedgerWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!window) window = new LedgerWindow(desk, dialogs, page);
    window->show();
    window->raise();
    window->activateWindow();
    window->table()->setFocus();
    return window;
}

} // namespace ui::ledger
