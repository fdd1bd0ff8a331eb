#include "ui/close/close_model.h"

#include <algorithm>

namespace ui::close {

void CloseModel::setLines(std::vector<Line> lines) {
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
}

void CloseModel::setProblem(int row, const QString& problem) {
    m_lines[static_cast<size_t>(row)].problem = problem;
    emit dataChanged(index(row), index(row));
}

int CloseModel::rowAbout(core::ColonyId colony) const {
    const auto it = std::ranges::find_if(m_lines, [&](const Line& l) { return l.about(colony); });
    return it == m_lines.end() ? -1 : static_cast<int>(it - m_lines.begin());
}

int CloseModel::rowOf(const Drafted& drafted) const {
    const auto it = std::ranges::find_if(m_lines, [&](const Line& l) { return l.is(drafted); });
    return it == m_lines.end() ? -1 : static_cast<int>(it - m_lines.begin());
}

int CloseModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant CloseModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    switch (role) {
    case Qt::DisplayRole:
        return at(index.row()).title();
    case Qt::AccessibleTextRole:
        return at(index.row()).spoken();
    default:
        return {};
    }
}

} // namespace ui::close
