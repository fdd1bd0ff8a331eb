#pragma once

#include "core/rules/kit_piles.h"
#include "ui/desk/reading.h"
#include "ui/look/colours.h"

#include <QAbstractTableModel>

#include <vector>

namespace ui::kit {

/// The kit of one place: a row a kind, and one a kind and colony of what is kept apart; a column a state.
class KitModel : public QAbstractTableModel {
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;

    static constexpr int kKind = 0; ///< the first column; states follow in the order of core::kit::states()

    /// `usual`: kinds that have a row though none was counted.
    void show(std::optional<core::YardId> yard, const std::vector<core::rules::KitPile>& piles,
              const QStringList& usual, const core::Snapshot& s);
    void setColours(const look::Colours& colours);
    /// What is counted in a cell; the kind's column stands for what is usable.
    core::rules::KitPlace placeAt(const QModelIndex& index) const;
    std::optional<int> countAt(const QModelIndex& index) const; ///< not set: none was counted
    QString apartAt(const QModelIndex& index) const;            ///< why the row is kept apart; empty: it is not
    QModelIndex indexOf(const core::rules::KitPlace& place) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        QString part;
        std::optional<core::ColonyId> colony;
        QString name;                           ///< of the colony
        QString apart;                          ///< empty: not kept apart
        std::vector<std::optional<int>> counts; ///< by state
    };
    Row& rowOf(const core::rules::KitPile& pile, const core::Snapshot& s);
    QString stateAt(int column) const;
    QString text(const Row& row, int column) const;

    std::optional<core::YardId> m_yard;
    std::vector<Row> m_rows;
    look::Colours m_colours;
};

} // namespace ui::kit
