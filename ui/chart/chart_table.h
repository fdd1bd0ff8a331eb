#pragma once

#include "ui/chart/chart.h"

#include <QAbstractTableModel>

namespace ui::chart {

/// The figures of a chart: a row a stop, a column a series, two more where it has intervals, then what is noted and
/// what happened that day.
struct ChartTable {
    QStringList columns;
    std::vector<QStringList> rows;
};

enum class TableFor { Eyes, File }; ///< a file has ISO days and empty cells where nothing is recorded
ChartTable tableOf(const Chart& chart, TableFor whom = TableFor::Eyes);

class ChartTableModel : public QAbstractTableModel {
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;
    void setChart(const Chart& chart);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation across, int role) const override;

private:
    ChartTable m_table;
};

} // namespace ui::chart
