#include "ui/board/board_model.h"

#include "ui/look/reason_text.h"

namespace ui::board {

void BoardModel::setRows(std::vector<BoardRow> rows, const core::Snapshot* snapshot) {
    beginResetModel();
    m_snapshot = snapshot;
    m_rows = std::move(rows);
    endResetModel();
}

QString BoardModel::tipOf(const BoardRow& row) const {
    if (!row.tip.isEmpty() || !m_snapshot || row.why.rule[0] == 0) return row.tip;
    return look::reasonTip(*m_snapshot, row.why);
}

void BoardModel::unfold(int row, const QString& rules, const QString& line) {
    BoardRow& unfolded = m_rows[static_cast<size_t>(row)];
    if (!unfolded.rules.isEmpty()) return;
    unfolded.rules = rules;
    if (!line.isEmpty()) unfolded.lines << line;
    emit dataChanged(index(row), index(row));
}

int BoardModel::rowAbout(core::ColonyId colony) const {
    int found = -1, asked = -1, signedRow = -1;
    for (size_t i = 0; i < m_rows.size(); ++i) {
        if (!m_rows[i].about(colony)) continue;
        if (m_rows[i].kind == RowKind::Union) return static_cast<int>(i);
        int& first = m_rows[i].kind == RowKind::Asked ? asked : m_rows[i].askedText.isEmpty() ? found : signedRow;
        if (first < 0) first = static_cast<int>(i);
    }
    for (const int row : {signedRow, found, asked})
        if (row >= 0) return row;
    return -1;
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
    case Qt::ToolTipRole: {
        const QString tip = tipOf(row);
        return tip.isEmpty() ? QVariant() : tip;
    }
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
