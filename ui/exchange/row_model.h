#pragma once

#include "ui/exchange/foreign_draft.h"

#include <QAbstractTableModel>
#include <QColor>
#include <QHash>

namespace ui::exchange {

/// The first rows of a file as they would come in; cells with a fault are marked and say what is wrong.
class RowModel : public QAbstractTableModel {
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;

    void showRows(const ForeignDraft& draft, const core::exchange::Faults& faults);
    void clear();
    void setWarn(const QColor& colour) { m_warn = colour; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString faultAt(const QModelIndex& index) const;

    std::vector<core::exchange::RowSeen> m_rows;
    QStringList m_columns;                               ///< of ours
    QHash<std::pair<qint64, QString>, QString> m_faults; ///< by line and column
    QColor m_warn;
};

/// Our column of a fault: faults of a mapped file name the file's own column, with ours in brackets.
QString oursOf(const QString& column);

} // namespace ui::exchange
