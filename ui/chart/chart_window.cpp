#include "ui/chart/chart_window.h"

#include "ui/chart/chart_panel.h"
#include "ui/look/sheet.h"

#include <QKeyEvent>
#include <QVBoxLayout>

namespace ui::chart {

ChartWindow::ChartWindow(Dialogs& dialogs, QWidget* page)
    : QWidget(page, Qt::Window), m_panel(new ChartPanel(dialogs, this)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(14, 12, 14, 12);
    all->addWidget(m_panel);
    resize(1000, 620);
    look::keepDressed(*this);
    setFocusProxy(m_panel);
}

void ChartWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        close();
        return;
    }
    QWidget::keyPressEvent(event);
}

ChartWindow* showLarge(const Chart& chart, const Sheet& sheet, std::optional<int> at, Dialogs& dialogs, QWidget* page) {
    auto* window = page->findChild<ChartWindow*>(QString(), Qt::FindDirectChildrenOnly);
    if (!window) window = new ChartWindow(dialogs, page);
    window->setWindowTitle(chart.title);
    window->panel()->setSheet(sheet);
    window->panel()->setChart(chart);
    window->panel()->showTable(false);
    if (at) window->panel()->view()->setStop(*at);
    window->show();
    window->raise();
    window->activateWindow();
    window->panel()->view()->setFocus();
    return window;
}

} // namespace ui::chart
