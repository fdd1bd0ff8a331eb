#include "ui/chart/chart_panel.h"

#include "ui/chart/chart_table.h"
#include "ui/dialogs.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>

namespace ui::chart {

ChartPanel::ChartPanel(Dialogs& dialogs, QWidget* parent)
    : QWidget(parent),
      m_dialogs(dialogs),
      m_view(new ChartView(this)),
      m_model(new ChartTableModel(this)),
      m_table(new QTableView(this)),
      m_shown(new QStackedWidget(this)),
      m_reading(new QLabel(this)),
      m_turn(button(tr("Table (T)"), QStringLiteral("chartTable"))) {
    build();
    connect(m_view, &ChartView::readingChanged, this, &ChartPanel::say);
    connect(m_turn, &QPushButton::clicked, this, [this] { showTable(!tableShown()); });
    for (QWidget* keys : std::initializer_list<QWidget*>{m_view, m_table}) keys->installEventFilter(this);
}

void ChartPanel::build() {
    m_table->setModel(m_model);
    m_table->setObjectName(QStringLiteral("chartTableBehind"));
    m_table->setAccessibleName(tr("The figures")); // until it has a chart
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_shown->addWidget(m_view);
    m_shown->addWidget(m_table);
    m_reading->setWordWrap(true);
    m_reading->setTextFormat(Qt::PlainText);
    m_reading->setObjectName(QStringLiteral("chartReading"));
    auto* print = button(tr("Print…"), QStringLiteral("chartPrint"));
    connect(print, &QPushButton::clicked, this,
            [this] { guarded(m_dialogs, [this] { printCharts(this, {m_view->chart()}, m_sheet); }); });
    auto* save = button(tr("Save as"), QStringLiteral("chartSave"));
    auto* ways = new QMenu(save);
    const std::pair<QString, QString> all[] = {{tr("PDF…"), QStringLiteral(".pdf")},
                                               {tr("Picture (PNG)…"), QStringLiteral(".png")},
                                               {tr("Table (CSV)…"), QStringLiteral(".csv")}};
    for (const auto& [text, ending] : all)
        connect(ways->addAction(text), &QAction::triggered, this,
                [this, ending] { guarded(m_dialogs, [&] { this->save(ending); }); });
    save->setMenu(ways);
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_turn);
    foot->addWidget(print);
    foot->addWidget(save);
    foot->addStretch(1);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(6);
    down->addWidget(m_shown, 1);
    down->addWidget(m_reading);
    down->addLayout(foot);
    setFocusProxy(m_view);
}

QPushButton* ChartPanel::button(const QString& text, const QString& name) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(name);
    made->setAccessibleName(text);
    return made;
}

void ChartPanel::setChart(const Chart& chart) {
    m_view->setChart(chart);
    m_model->setChart(chart);
    m_table->setAccessibleName(tr("%1, the figures").arg(chart.title));
    fitTable();
    for (const char* name : {"chartPrint", "chartSave"})
        findChild<QPushButton*>(QLatin1StringView(name))->setEnabled(!isEmpty(chart));
    m_turn->setEnabled(m_model->rowCount() > 0);
    if (m_model->rowCount() == 0 && tableShown()) showTable(false);
}

void ChartPanel::fitTable() {
    m_table->resizeColumnsToContents();
    m_table->resizeRowsToContents();
}

bool ChartPanel::tableShown() const { return m_shown->currentWidget() == m_table; }

void ChartPanel::showTable(bool shown) {
    if (shown && m_model->rowCount() == 0) return;
    const bool keys = m_shown->isAncestorOf(QApplication::focusWidget());
    m_shown->setCurrentWidget(shown ? static_cast<QWidget*>(m_table) : m_view);
    m_turn->setText(shown ? tr("Drawing (T)") : tr("Table (T)"));
    m_turn->setAccessibleName(m_turn->text());
    setFocusProxy(m_shown->currentWidget());
    if (shown) {
        fitTable();
        const auto stop = m_view->stop();
        const auto stops = stopsOf(m_view->chart());
        const auto row = stop ? std::ranges::find(stops, *stop) - stops.begin() : 0;
        m_table->setCurrentIndex(m_model->index(static_cast<int>(row), 0));
    } else if (m_table->currentIndex().isValid()) {
        m_view->setStop(stopsOf(m_view->chart())[static_cast<size_t>(m_table->currentIndex().row())]);
    }
    if (keys) m_shown->currentWidget()->setFocus(Qt::OtherFocusReason);
}

bool ChartPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_T && key->modifiers() == Qt::NoModifier) {
            showTable(!tableShown());
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

QString ChartPanel::reading() const { return m_reading->text(); }

void ChartPanel::say(const QString& text) {
    m_reading->setText(text.isEmpty() ? tr("Arrow keys or the mouse read the figures.") : text);
}

void ChartPanel::save(const QString& ending) {
    const Chart& chart = m_view->chart();
    const auto path = m_dialogs.fileToWrite(tr("Chart: %1").arg(chart.title), chart.title + ending);
    if (!path) return;
    if (ending == QStringLiteral(".pdf"))
        writeChartPdf({chart}, m_sheet, *path);
    else if (ending == QStringLiteral(".png"))
        writeChartPng(chart, *path);
    else
        writeChartCsv(chart, *path);
    say(tr("It is in %1.").arg(*path));
}

} // namespace ui::chart
