#pragma once

#include "ui/entry/entry_work.h"

#include <QAbstractTableModel>

namespace ui::entry {

/// The hives of the yard as rows; the label, then the columns that are shown.
class EntryModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role {
        LastRole = Qt::UserRole, ///< what stood there at the visit before
        StateRole,               ///< RowState
        ProblemRole,
        SpokenRole ///< the field in full, for the editor
    };

    EntryModel(EntryWork& work, desk::Desk& desk, QObject* parent);

    const std::vector<core::TallyColumn>& columns() const { return m_columns; }
    void setColumns(const std::vector<core::TallyColumn>& columns);
    /// nullopt: the label's.
    std::optional<core::TallyColumn> columnAt(int section) const;
    std::optional<int> sectionOf(visit::Field field) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

private:
    QVariant ofLabel(int row, int role) const;
    QString spoken(const QModelIndex& index) const;
    void readRows();

    EntryWork& m_work;
    desk::Desk& m_desk;
    std::vector<core::TallyColumn> m_columns;
    std::vector<core::ColonyId> m_shown; ///< the rows as last told
};

} // namespace ui::entry
