#pragma once

#include "ui/chart/chart_output.h"
#include "ui/chart/chart_view.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace ui {
struct Dialogs;
}

namespace ui::chart {

class ChartTableModel;

/// A chart with the table behind it (T turns from one to the other), what the keys read in a line below, and print,
/// PDF, picture and CSV.
class ChartPanel : public QWidget {
    Q_OBJECT
public:
    explicit ChartPanel(Dialogs& dialogs, QWidget* parent = nullptr);

    void setChart(const Chart& chart);
    void setSheet(const Sheet& sheet) { m_sheet = sheet; } ///< of prints and PDFs
    ChartView* view() const { return m_view; }
    QTableView* table() const { return m_table; }
    bool tableShown() const;
    void showTable(bool shown); ///< the keys follow where this had them
    QString reading() const;
    void say(const QString& text); ///< in the line below, until the next reading

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void fitTable();
    void save(const QString& ending);
    QPushButton* button(const QString& text, const QString& name);

    Dialogs& m_dialogs;
    Sheet m_sheet;
    ChartView* m_view;
    ChartTableModel* m_model;
    QTableView* m_table;
    QStackedWidget* m_shown;
    QLabel* m_reading;
    QPushButton* m_turn;
};

} // namespace ui::chart
