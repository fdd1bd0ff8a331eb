#pragma once

#include "ui/chart/chart_output.h"

#include <QWidget>

namespace ui {
struct Dialogs;
}

namespace ui::chart {

class ChartPanel;

/// A chart opened large, in a window beside the book: one a page, the next chart takes it. Escape closes it.
class ChartWindow : public QWidget {
    Q_OBJECT
public:
    ChartWindow(Dialogs& dialogs, QWidget* page);
    ChartPanel* panel() const { return m_panel; }

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    ChartPanel* m_panel;
};

/// Shows the chart in the window that `page` keeps. `at`: the stop that is read first.
ChartWindow* showLarge(const Chart& chart, const Sheet& sheet, std::optional<int> at, Dialogs& dialogs, QWidget* page);

} // namespace ui::chart
