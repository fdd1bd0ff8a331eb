#include "ui/find/colony_model.h"

#include "core/base/natural_order.h"
#include "ui/look/words.h"

#include <algorithm>
#include <numeric>

namespace ui::find {

void ColonyModel::show(const desk::Reading& reading) {
    beginResetModel();
    m_reading = &reading;
    m_figures = reading.figures();
    m_labels.clear();
    m_yards.clear();
    for (const core::SnapColony& c : reading.snapshot.colonies) m_labels.push_back(core::folded(c.shown));
    for (const core::SnapYard& y : reading.snapshot.yards) m_yards.push_back(core::folded(y.name));
    sortAll();
    filterAll();
    endResetModel();
}

void ColonyModel::clear() {
    beginResetModel();
    m_reading = nullptr;
    m_figures.clear();
    m_sorted.clear();
    m_shown.clear();
    endResetModel();
}

void ColonyModel::setFilter(ColonyFilter filter) {
    beginResetModel();
    m_filter = std::move(filter);
    filterAll();
    endResetModel();
}

void ColonyModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || column >= kColonyColumns) return;
    emit layoutAboutToBeChanged();
    const QModelIndexList before = persistentIndexList();
    std::vector<size_t> colonies;
    for (const QModelIndex& index : before) colonies.push_back(m_shown[static_cast<size_t>(index.row())]);
    m_by = static_cast<ColonyColumn>(column);
    m_descending = order == Qt::DescendingOrder;
    sortAll();
    filterAll();
    std::vector<int> rows(m_figures.size(), -1);
    for (size_t i = 0; i < m_shown.size(); ++i) rows[m_shown[i]] = static_cast<int>(i);
    QModelIndexList after;
    for (int i = 0; i < before.size(); ++i) after << index(rows[colonies[static_cast<size_t>(i)]], before[i].column());
    changePersistentIndexList(before, after);
    emit layoutChanged();
}

/// What is not recorded comes last, either way round; those alike stay in the order of their labels.
void ColonyModel::sortAll() {
    m_sorted.resize(m_figures.size());
    std::iota(m_sorted.begin(), m_sorted.end(), size_t{0});
    if (!m_reading) return;
    if (m_by == ColonyColumn::Stand) {
        std::vector<QString> names;
        for (const auto& f : m_figures) names.push_back(f.place ? core::folded(f.place->standName) : QString());
        std::ranges::stable_sort(m_sorted, [&](size_t a, size_t b) {
            if (names[a].isEmpty() != names[b].isEmpty()) return names[b].isEmpty();
            const int order = core::naturalCompareFolded(names[a], names[b]);
            return m_descending ? order > 0 : order < 0;
        });
        return;
    }
    std::vector<std::optional<double>> value;
    for (const auto& f : m_figures) value.push_back(sortValue(*m_reading, f, m_by));
    std::ranges::stable_sort(m_sorted, [&](size_t a, size_t b) {
        if (value[a].has_value() != value[b].has_value()) return value[a].has_value();
        if (!value[a]) return false;
        return m_descending ? *value[a] > *value[b] : *value[a] < *value[b];
    });
}

bool ColonyModel::shows(size_t colony, const QString& text) const {
    const core::rules::ColonyFigures& f = m_figures[colony];
    if (!f.living && !m_filter.ended) return false;
    if (m_filter.yard && f.yard != m_filter.yard) return false;
    if (m_filter.strengthClass && f.strengthClass != m_filter.strengthClass) return false;
    if (m_filter.queen && (!f.living || f.queen != *m_filter.queen)) return false;
    if (m_filter.held && (!f.living || f.held() != *m_filter.held)) return false;
    if (m_filter.heldAs && !f.heldAs(*m_filter.heldAs)) return false;
    if (m_filter.among && !m_among[colony]) return false;
    if (text.isEmpty() || m_labels[colony].contains(text)) return true;
    return f.yard && m_yards[static_cast<size_t>(f.yard->value)].contains(text);
}

void ColonyModel::filterAll() {
    m_shown.clear();
    m_among.assign(m_figures.size(), false);
    if (m_filter.among)
        for (const core::ColonyIx ix : *m_filter.among)
            if (static_cast<size_t>(ix.value) < m_among.size()) m_among[static_cast<size_t>(ix.value)] = true;
    const QString text = core::folded(m_filter.text.trimmed());
    for (const size_t colony : m_sorted)
        if (shows(colony, text)) m_shown.push_back(colony);
}

ColonyTotals ColonyModel::totals() const {
    ColonyTotals t;
    for (const auto& f : m_figures) t.of += f.living || m_filter.ended;
    t.shown = static_cast<int>(m_shown.size());
    for (const size_t i : m_shown) {
        const auto& f = m_figures[i];
        if (f.strength) {
            ++t.counted;
            t.frames = t.frames + *f.strength;
        }
        if (f.gross) {
            ++t.weighed;
            t.gross += f.gross->value;
        }
        t.held += f.held();
    }
    return t;
}

core::ColonyId ColonyModel::colonyAt(int row) const { return m_reading->snapshot.colony(at(row).colony).id; }

std::optional<int> ColonyModel::rowOf(core::ColonyId colony) const {
    for (int row = 0; row < rowCount(); ++row)
        if (colonyAt(row) == colony) return row;
    return std::nullopt;
}

int ColonyModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

int ColonyModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kColonyColumns; }

QVariant ColonyModel::data(const QModelIndex& index, int role) const {
    if (!m_reading || !checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto column = static_cast<ColonyColumn>(index.column());
    switch (role) {
    case Qt::DisplayRole:
        return cellText(*m_reading, at(index.row()), column);
    case Qt::ToolTipRole: {
        const QString text = cellText(*m_reading, at(index.row()), column);
        return text.size() > 24 ? QVariant(text) : QVariant();
    }
    case Qt::AccessibleTextRole: {
        const QString text = cellText(*m_reading, at(index.row()), column);
        return columnTitle(column) + QStringLiteral(": ") + (text == look::dash() ? tr("not recorded or none") : text);
    }
    case Qt::TextAlignmentRole:
        return isNumber(column) ? QVariant(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
    case ColonyRole:
        return colonyAt(index.row()).value;
    default:
        return {};
    }
}

QVariant ColonyModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return columnTitle(static_cast<ColonyColumn>(section));
}

} // namespace ui::find
