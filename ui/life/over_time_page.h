#pragma once

#include "ui/chart/chart.h"
#include "ui/life/colony_life.h"
#include "ui/life/life_page.h"

#include <QTimer>

class QScrollArea;

namespace ui::chart {
class ChartView;
class ChartWindow;
} // namespace ui::chart

namespace ui::life {

class HoldWatch;

/// Strength, stores, weight, mites and queen of a colony, small charts one under the other on the same days. What the
/// keys or the mouse read stands below; Enter or a click opens a chart large, with its table.
class OverTimePage : public LifePage {
    Q_OBJECT
public:
    OverTimePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent);
    QWidget* keys() override;
    const std::vector<chart::ChartView*>& charts() const { return m_charts; }
    QString reading() const;
    chart::ChartWindow* openLarge(size_t nth);

protected:
    void fill() override;

private:
    chart::ChartView* newChart();
    void show(const std::vector<chart::Chart>& charts);
    void sayHead(const QString& ofHolds);
    void askForHolds();
    void takeHolds(core::ColonyId colony, const std::vector<core::rules::HoldSpan>& spans, int apart);

    QScrollArea* m_scroll;
    QLabel* m_reading;
    std::vector<chart::ChartView*> m_charts;
    std::optional<ColonyLife> m_life;
    HoldWatch* m_watch;
    QTimer m_rest; ///< holds are asked for once the hand rests
};

} // namespace ui::life
