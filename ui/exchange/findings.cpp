#include "ui/exchange/findings.h"

#include "ui/exchange/row_model.h"
#include "ui/history/roomy_cells.h"
#include "ui/look/colours.h"
#include "ui/look/page_tabs.h"

#include <QHeaderView>
#include <QShortcut>
#include <QStackedWidget>
#include <QTableWidget>
#include <QVBoxLayout>

namespace ui::exchange {

namespace ex = core::exchange;

namespace {

void settleTable(QTableView& table) {
    table.setItemDelegate(new history::RoomyCells(&table));
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setTabKeyNavigation(false);
    table.setShowGrid(false);
    table.setWordWrap(true);
    table.verticalHeader()->hide();
    table.horizontalHeader()->setHighlightSections(false);
    table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

} // namespace

Findings::Findings(QWidget* parent)
    : QWidget(parent),
      m_tabs(new look::PageTabs(this)),
      m_stack(new QStackedWidget(this)),
      m_model(new RowModel(this)),
      m_rows(new QTableView(this)),
      m_faults(table(tr("What is wrong"), {tr("line"), tr("column"), tr("what is wrong, what was expected")})),
      m_differences(table(tr("Where the file says otherwise than the book"),
                          {tr("line"), tr("row"), tr("column"), tr("the book says"), tr("the file says")})) {
    m_tabs->setAccessibleName(tr("What the file would bring"));
    m_rows->setModel(m_model);
    m_rows->setObjectName(QStringLiteral("importRows"));
    m_rows->setAccessibleName(tr("First rows as they would come in"));
    settleTable(*m_rows);
    m_faults->setObjectName(QStringLiteral("importFaults"));
    m_differences->setObjectName(QStringLiteral("importDifferences"));
    for (QTableView* page : std::initializer_list<QTableView*>{m_rows, m_faults, m_differences}) {
        m_tabs->addTab({});
        m_stack->addWidget(page);
    }
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(4);
    down->addWidget(m_tabs);
    down->addWidget(m_stack, 1);
    connect(m_tabs, &QTabBar::currentChanged, m_stack, &QStackedWidget::setCurrentIndex);
    connect(m_faults, &QTableWidget::activated, this,
            [this](const QModelIndex& at) { emit columnAsked(oursOf(m_faults->item(at.row(), 1)->text())); });
    for (const auto& [keys, by] : {std::pair{"Ctrl+PgDown", 1}, {"Ctrl+PgUp", -1}})
        connect(new QShortcut(QKeySequence(QLatin1StringView(keys)), parent), &QShortcut::activated, this,
                [this, step = by] { showPage((page() + step + m_tabs->count()) % m_tabs->count()); });
    clear();
}

QTableWidget* Findings::table(const QString& name, const QStringList& columns) {
    auto* made = new QTableWidget(0, static_cast<int>(columns.size()), this);
    made->setAccessibleName(name);
    made->setHorizontalHeaderLabels(columns);
    made->setSelectionBehavior(QAbstractItemView::SelectRows);
    settleTable(*made);
    made->horizontalHeader()->setStretchLastSection(true);
    return made;
}

int Findings::page() const { return m_tabs->currentIndex(); }

void Findings::showPage(int page) {
    const bool keys = m_stack->isAncestorOf(focusWidget());
    m_tabs->setCurrentIndex(page);
    if (keys) m_stack->currentWidget()->setFocus(Qt::OtherFocusReason);
}

void Findings::addTo(QTableWidget& table, const QStringList& cells) {
    const int row = table.rowCount();
    table.insertRow(row);
    for (int i = 0; i < cells.size(); ++i) {
        auto* item = new QTableWidgetItem(cells[i]);
        item->setToolTip(cells[i]);
        item->setData(Qt::AccessibleTextRole, tr("%1: %2").arg(table.horizontalHeaderItem(i)->text(),
                                                               cells[i].isEmpty() ? tr("blank") : cells[i]));
        table.setItem(row, i, item);
    }
}

void Findings::showReport(const ForeignDraft& draft, const ex::ImportReport& report) {
    m_model->showRows(draft, report.faults);
    m_faults->setRowCount(0);
    for (const ex::Fault& fault : report.faults.kept())
        addTo(*m_faults, {QString::number(fault.line), fault.column, fault.what});
    const qint64 more = report.faults.count() - static_cast<qint64>(report.faults.kept().size());
    if (more > 0) addTo(*m_faults, {tr("…"), QString(), tr("and %1 more").arg(more)});
    m_differences->setRowCount(0);
    const auto said = [](const QString& value) { return value.isEmpty() ? tr("blank") : value; };
    for (const ex::Difference& d : report.differences)
        addTo(*m_differences, {QString::number(d.line), d.name, d.column, said(d.stored), said(d.given)});
    m_tabs->setTabText(kRows, tr("First rows"));
    m_tabs->setTabText(kFaults, tr("Faults (%1)").arg(report.faults.count()));
    m_tabs->setTabText(kDifferences, tr("Otherwise in the book (%1)").arg(report.otherwise));
    dress();
}

void Findings::clear() {
    m_model->clear();
    m_faults->setRowCount(0);
    m_differences->setRowCount(0);
    m_tabs->setTabText(kRows, tr("First rows"));
    m_tabs->setTabText(kFaults, tr("Faults"));
    m_tabs->setTabText(kDifferences, tr("Otherwise in the book"));
}

void Findings::dress() {
    m_model->setWarn(look::coloursOf(*this).warnText);
    m_rows->resizeColumnsToContents();
    for (QTableWidget* table : {m_faults, m_differences}) {
        table->resizeColumnsToContents();
        for (int i = 0; i + 1 < table->columnCount(); ++i)
            table->setColumnWidth(i, std::min(table->columnWidth(i), fontMetrics().averageCharWidth() * 26));
        table->resizeRowsToContents();
    }
}

} // namespace ui::exchange
