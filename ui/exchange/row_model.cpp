#include "ui/exchange/row_model.h"

#include <QBrush>
#include <QFont>

namespace ui::exchange {

namespace ex = core::exchange;

namespace {
constexpr size_t kMostRows = 50;
}

QString oursOf(const QString& column) {
    const qsizetype open = column.lastIndexOf(QLatin1StringView(" ("));
    return open > 0 && column.endsWith(u')') ? column.mid(open + 2).chopped(1) : column;
}

void RowModel::showRows(const ForeignDraft& draft, const ex::Faults& faults) {
    beginResetModel();
    m_rows = ex::firstRowsSeen(draft.text(), draft.mapping(), kMostRows);
    m_columns.clear();
    for (const ex::ColumnMapping& c : draft.mapping().columns) m_columns << c.to;
    if (m_columns.isEmpty()) { // nothing is chosen yet: the file as it is
        ex::Mapping same{draft.kind(), {}, draft.forms(), {}};
        for (const QString& name : draft.header()) same.columns.push_back({name, name, ex::CellUnit::Ours, {}, {}});
        m_rows = ex::firstRowsSeen(draft.text(), same, kMostRows);
        m_columns = draft.header();
    }
    m_faults.clear();
    for (const ex::Fault& fault : faults.kept()) {
        const std::pair<qint64, QString> cell(fault.line, oursOf(fault.column));
        if (!m_faults.contains(cell)) m_faults.insert(cell, fault.what);
    }
    endResetModel();
}

void RowModel::clear() {
    beginResetModel();
    m_rows.clear();
    m_columns.clear();
    m_faults.clear();
    endResetModel();
}

int RowModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RowModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size()) + 1;
}

QString RowModel::faultAt(const QModelIndex& index) const {
    if (index.column() == 0) return {};
    return m_faults.value({m_rows[static_cast<size_t>(index.row())].line, m_columns[index.column() - 1]});
}

QVariant RowModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const ex::RowSeen& row = m_rows[static_cast<size_t>(index.row())];
    const QString text = index.column() == 0 ? QString::number(row.line) : row.cells.value(index.column() - 1);
    const QString fault = faultAt(index);
    switch (role) {
    case Qt::DisplayRole:
        return fault.isEmpty() ? text.simplified() : QStringLiteral("! ") + text.simplified();
    case Qt::ToolTipRole:
        return fault.isEmpty() ? QVariant() : QVariant(fault);
    case Qt::AccessibleTextRole: {
        const QString name = headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString();
        const QString said = text.isEmpty() ? tr("%1: not recorded").arg(name) : tr("%1: %2").arg(name, text);
        return fault.isEmpty() ? said : tr("%1, %2").arg(said, fault);
    }
    case Qt::ForegroundRole:
        return fault.isEmpty() ? QVariant() : QVariant(QBrush(m_warn));
    default:
        return {};
    }
}

QVariant RowModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return section == 0 ? tr("line") : QString(m_columns.value(section - 1)).replace(u'_', u' ');
}

} // namespace ui::exchange
