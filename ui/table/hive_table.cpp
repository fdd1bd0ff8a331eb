#include "ui/table/hive_table.h"

#include <QScopedValueRollback>

namespace ui::table {

HiveTable::HiveTable(QWidget* parent)
    : ColumnTable(parent), m_hives(new HiveModel(this)), m_sorter(new HiveSorter(this)) {
    m_sorter->setSourceModel(m_hives);
    takeModel(m_sorter);
    setAccessibleName(tr("Table of hives"));
    connect(selectionModel(), &QItemSelectionModel::selectionChanged, this, &HiveTable::tellSelected);
    connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& now) {
        if (selectionModel()->isSelected(now)) tellSelected(); // else what is selected follows
    });
    connect(this, &QTableView::activated, this, [this](const QModelIndex& at) {
        if (at.isValid()) emit opened(m_hives->colonyAt(m_sorter->mapToSource(at).row()));
    });
}

void HiveTable::showHives(const desk::Reading& reading, std::optional<core::YardIx> yard) {
    m_telling = true;
    m_hives->show(reading, yard);
    m_telling = false;
}

void HiveTable::tellSelected() {
    if (m_telling) return;
    std::vector<core::ColonyId> colonies;
    std::optional<core::ColonyId> lead;
    for (const QModelIndex& row : selectionModel()->selectedRows()) {
        colonies.push_back(m_hives->colonyAt(m_sorter->mapToSource(row).row()));
        if (row.row() == currentIndex().row()) lead = colonies.back();
    }
    if (!colonies.empty()) emit selectAsked(colonies, lead.value_or(colonies.back()));
}

void HiveTable::setSelected(const std::vector<core::ColonyId>& colonies, std::optional<core::ColonyId> lead) {
    const QScopedValueRollback telling(m_telling, true);
    const int column = currentIndex().isValid() ? currentIndex().column() : 0;
    const auto indexOf = [&](core::ColonyId colony) {
        const auto row = m_hives->rowOf(colony);
        return row ? m_sorter->mapFromSource(m_hives->index(*row, column)) : QModelIndex();
    };
    const QModelIndex current = lead ? indexOf(*lead) : QModelIndex();
    QItemSelection rows;
    for (const core::ColonyId colony : colonies)
        if (const QModelIndex at = indexOf(colony); at.isValid()) rows.select(at, at);
    if (current.isValid() && current != currentIndex())
        selectionModel()->setCurrentIndex(current, QItemSelectionModel::NoUpdate);
    selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
}

} // namespace ui::table
