#pragma once

#include "ui/desk/reading.h"

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>

#include <array>
#include <optional>
#include <vector>

namespace ui::table {

enum class Column { Label, Stand, Strength, Class, Boxes, Queen, Holds, Plan, LastVisit, Asked };
constexpr int kColumns = 10;

/// The hives of one yard as a table, for keys and screen readers: the same hives as the plan, never written to.
class HiveModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { SortRole = Qt::UserRole, ColonyRole };

    using QAbstractTableModel::QAbstractTableModel;

    void show(const desk::Reading& reading, std::optional<core::YardIx> yard);
    std::optional<int> rowOf(core::ColonyId colony) const;
    core::ColonyId colonyAt(int row) const { return m_rows[static_cast<size_t>(row)].colony; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        core::ColonyId colony;
        std::array<QString, kColumns> text;
        qint64 strength = -1; ///< quarters
        qint64 visited = 0;   ///< day number
    };
    static Row rowFor(const desk::Reading& reading, const core::rules::ColonyFacts& facts);
    std::vector<Row> m_rows;
};

/// Sorts labels and stands in natural order, quantities by number.
class HiveSorter : public QSortFilterProxyModel {
    Q_OBJECT
public:
    using QSortFilterProxyModel::QSortFilterProxyModel;

protected:
    bool lessThan(const QModelIndex& a, const QModelIndex& b) const override;
};

} // namespace ui::table
