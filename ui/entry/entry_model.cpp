#include "ui/entry/entry_model.h"

#include "ui/entry/entry_columns.h"
#include "ui/look/words.h"

#include <algorithm>

namespace ui::entry {

using core::TallyColumn;

EntryModel::EntryModel(EntryWork& work, desk::Desk& desk, QObject* parent)
    : QAbstractTableModel(parent), m_work(work), m_desk(desk) {
    connect(&m_work, &EntryWork::rowsRead, this, &EntryModel::readRows);
    connect(&m_work, &EntryWork::rowChanged, this,
            [this](int row) { emit dataChanged(index(row, 0), index(row, columnCount() - 1)); });
}

void EntryModel::setColumns(const std::vector<TallyColumn>& columns) {
    if (columns == m_columns) return;
    beginResetModel();
    m_columns = columns;
    endResetModel();
}

/// The same hives in the same order: what is typed into goes on.
void EntryModel::readRows() {
    std::vector<core::ColonyId> now;
    for (const EntryRow& row : m_work.rows()) now.push_back(row.colony);
    if (now == m_shown) {
        if (!now.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        return;
    }
    beginResetModel();
    m_shown = std::move(now);
    endResetModel();
}

std::optional<TallyColumn> EntryModel::columnAt(int section) const {
    if (section < 1 || section > static_cast<int>(m_columns.size())) return std::nullopt;
    return m_columns[static_cast<size_t>(section - 1)];
}

std::optional<int> EntryModel::sectionOf(visit::Field field) const {
    for (size_t i = 0; i < m_columns.size(); ++i)
        if (visit::fieldOf(m_columns[i]) == field) return static_cast<int>(i) + 1;
    return std::nullopt;
}

int EntryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

int EntryModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size()) + 1;
}

QVariant EntryModel::ofLabel(int row, int role) const {
    const EntryRow& r = m_work.rows()[static_cast<size_t>(row)];
    switch (role) {
    case Qt::DisplayRole:
        return r.label;
    case LastRole: { // of another day than the one written down
        const auto draft = m_work.typed(row);
        return draft && draft->day != m_work.carried().day ? look::shortDayText(draft->day) : QString();
    }
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole: {
        const QString states[] = {tr("nothing typed"), tr("typed, not saved"), tr("typed, and something is wrong"),
                                  tr("saved")};
        return tr("%1: %2").arg(r.label, states[static_cast<size_t>(m_work.state(row))]);
    }
    default:
        return {};
    }
}

QString EntryModel::spoken(const QModelIndex& at) const {
    return tr("%1, %2").arg(m_work.rows()[static_cast<size_t>(at.row())].label,
                            spokenOf(*columnAt(at.column()), m_desk.reading().snapshot.settings.showWeight));
}

QVariant EntryModel::data(const QModelIndex& at, int role) const {
    if (!at.isValid() || at.row() >= static_cast<int>(m_work.rows().size())) return {};
    if (role == StateRole) return static_cast<int>(m_work.state(at.row()));
    const auto column = columnAt(at.column());
    if (!column) return ofLabel(at.row(), role);
    switch (role) {
    case Qt::DisplayRole:
        return m_work.text(at.row(), *column);
    case Qt::EditRole:
        return typedIn(m_work.base(at.row()), visit::fieldOf(*column));
    case LastRole:
        return m_work.open(at.row(), *column) ? m_work.lastText(at.row(), *column) : QString();
    case ProblemRole:
        return m_work.problem(at.row(), *column);
    case SpokenRole:
        return spoken(at);
    case Qt::ToolTipRole:
        return m_work.problem(at.row(), *column);
    case Qt::AccessibleTextRole: {
        const QString text = m_work.text(at.row(), *column);
        const QString last = m_work.lastText(at.row(), *column);
        QString out = tr("%1: %2").arg(spoken(at), text.isEmpty() ? tr("empty") : text);
        if (!last.isEmpty()) out = tr("%1; the visit before: %2").arg(out, last);
        return out;
    }
    default:
        return {};
    }
}

QVariant EntryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    const auto column = columnAt(section);
    if (!column) return role == Qt::DisplayRole ? QVariant(tr("hive")) : QVariant();
    const core::WeightUnit unit = m_desk.reading().snapshot.settings.showWeight;
    if (role == Qt::DisplayRole) return headOf(*column, unit);
    if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole) return spokenOf(*column, unit);
    return {};
}

Qt::ItemFlags EntryModel::flags(const QModelIndex& at) const {
    const auto column = columnAt(at.column());
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (column && m_desk.writeBarred().isEmpty() && m_work.open(at.row(), *column)) flags |= Qt::ItemIsEditable;
    return flags;
}

bool EntryModel::setData(const QModelIndex& at, const QVariant& value, int role) {
    const auto column = columnAt(at.column());
    if (role != Qt::EditRole || !column || !(flags(at) & Qt::ItemIsEditable)) return false;
    m_work.type(at.row(), *column, value.toString());
    return true;
}

} // namespace ui::entry
