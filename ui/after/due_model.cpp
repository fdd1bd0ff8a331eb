#include "ui/after/due_model.h"

#include <algorithm>

namespace ui::after {

void DueModel::setRows(std::vector<DueRow> rows, core::Day today) {
    beginResetModel();
    m_rows = std::move(rows);
    m_today = today;
    endResetModel();
}

void DueModel::setAnswers(int row, const Answers& answers) {
    m_rows[static_cast<size_t>(row)].answers = answers;
    emit dataChanged(index(row), index(row));
}

int DueModel::rowAbout(core::ColonyId colony) const {
    const auto it =
        std::ranges::find_if(m_rows, [&](const DueRow& r) { return r.heading.isEmpty() && r.colony == colony; });
    return it == m_rows.end() ? -1 : static_cast<int>(it - m_rows.begin());
}

int DueModel::firstCheck(const QString& yard) const {
    auto it = std::ranges::find_if(m_rows, [&](const DueRow& r) { return r.heading.isEmpty() && r.yard == yard; });
    if (it == m_rows.end()) it = std::ranges::find_if(m_rows, [](const DueRow& r) { return r.heading.isEmpty(); });
    return it == m_rows.end() ? -1 : static_cast<int>(it - m_rows.begin());
}

int DueModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant DueModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const DueRow& row = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return row.heading.isEmpty() ? row.title : row.heading;
    case Qt::AccessibleTextRole:
        return row.spoken(m_today);
    default:
        return {};
    }
}

Qt::ItemFlags DueModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    if (!at(index.row()).heading.isEmpty()) return Qt::ItemIsEnabled;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace ui::after
