#include "ui/board/board_model.h"

namespace ui::board {

void BoardModel::setRows(std::vector<BoardRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int BoardModel::rowAbout(core::ColonyId colony) const {
    int found = -1;
    for (size_t i = 0; i < m_rows.size(); ++i) {
        if (!m_rows[i].about(colony)) continue;
        if (m_rows[i].kind == RowKind::Union) return static_cast<int>(i);
        if (found < 0) found = static_cast<int>(i);
    }
    return found;
}

int BoardModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant BoardModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const BoardRow& row = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return row.title.isEmpty() ? row.lines.join(u' ') : row.title;
    case Qt::AccessibleTextRole:
        return row.spoken();
    default:
        return {};
    }
}

Qt::ItemFlags BoardModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    const RowKind kind = at(index.row()).kind;
    if (kind == RowKind::Section || kind == RowKind::Note) return Qt::ItemIsEnabled;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace ui::board
