#include "ui/health/contact_model.h"

#include "ui/look/words.h"

namespace ui::health {

void ContactModel::show(std::vector<core::report::ContactLine> lines) {
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
}

int ContactModel::rowAbout(core::ColonyIx colony) const {
    for (size_t i = 0; i < m_lines.size(); ++i)
        if (m_lines[i].far == colony) return static_cast<int>(i);
    return -1;
}

int ContactModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int ContactModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 5; }

QVariant ContactModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const core::report::ContactLine& line = at(index.row());
    const auto column = static_cast<Column>(index.column());
    if (role == Qt::TextAlignmentRole && column == Column::Steps) return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    switch (column) {
    case Column::When:
        return line.when;
    case Column::What:
        return line.what;
    case Column::From:
        return line.from;
    case Column::To:
        return line.to;
    case Column::Steps:
        return line.steps ? QString::number(*line.steps) : look::dash();
    }
    return {};
}

QVariant ContactModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (static_cast<Column>(section)) {
    case Column::When:
        return tr("When");
    case Column::What:
        return tr("What");
    case Column::From:
        return tr("From");
    case Column::To:
        return tr("To");
    case Column::Steps:
        return tr("Gifts away");
    }
    return {};
}

} // namespace ui::health
