#include "ui/kit/kit_model.h"

#include "core/base/natural_order.h"
#include "core/model/kit_words.h"
#include "ui/kit/kit_book.h"
#include "ui/look/words.h"

#include <QColor>
#include <QFont>

#include <algorithm>

namespace ui::kit {

namespace {

QString nameOf(const core::Snapshot& s, core::ColonyId id) {
    for (const core::SnapColony& c : s.colonies)
        if (c.id == id) return c.shown;
    return {};
}

} // namespace

KitModel::Row& KitModel::rowOf(const core::rules::KitPile& pile, const core::Snapshot& s) {
    const auto same = [&](const Row& row) { return row.part == pile.place.part && row.colony == pile.place.colony; };
    if (const auto found = std::find_if(m_rows.begin(), m_rows.end(), same); found != m_rows.end()) return *found;
    Row row{pile.place.part, pile.place.colony, {}, {}, {}};
    if (row.colony) row.name = nameOf(s, *row.colony);
    row.counts.resize(static_cast<size_t>(core::kit::states().size()));
    m_rows.push_back(row);
    return m_rows.back();
}

void KitModel::show(std::optional<core::YardId> yard, const std::vector<core::rules::KitPile>& piles,
                    const QStringList& usual, const core::Snapshot& s) {
    beginResetModel();
    m_yard = yard;
    m_rows.clear();
    for (const QString& part : usual) rowOf({{yard, part, core::kit::kUsable}, 0}, s);
    for (const core::rules::KitPile& pile : piles) {
        if (pile.place.yard != yard) continue;
        Row& row = rowOf(pile, s);
        row.counts[static_cast<size_t>(core::kit::states().indexOf(pile.place.state))] = pile.count;
        if (pile.place.state == core::kit::kQuarantined) row.apart = apartText(s, pile);
    }
    std::stable_sort(m_rows.begin(), m_rows.end(), [&](const Row& a, const Row& b) {
        if (a.part != b.part) return core::naturalCompare(a.part, b.part) < 0;
        return core::naturalCompare(a.name, b.name) < 0;
    });
    endResetModel();
}

void KitModel::setColours(const look::Colours& colours) {
    m_colours = colours;
    if (!m_rows.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

QString KitModel::stateAt(int column) const {
    return column == kKind ? core::kit::kUsable : core::kit::states().value(column - 1);
}

core::rules::KitPlace KitModel::placeAt(const QModelIndex& index) const {
    if (!index.isValid()) return {m_yard, {}, core::kit::kUsable};
    const Row& row = m_rows[static_cast<size_t>(index.row())];
    core::rules::KitPlace place{m_yard, row.part, stateAt(index.column()), row.colony};
    if (!core::kit::keepsColony(place.state)) place.colony.reset();
    return place;
}

std::optional<int> KitModel::countAt(const QModelIndex& index) const {
    if (!index.isValid()) return std::nullopt;
    const int state = index.column() == kKind ? 0 : index.column() - 1;
    return m_rows[static_cast<size_t>(index.row())].counts[static_cast<size_t>(state)];
}

QString KitModel::apartAt(const QModelIndex& index) const {
    return index.isValid() ? m_rows[static_cast<size_t>(index.row())].apart : QString();
}

QModelIndex KitModel::indexOf(const core::rules::KitPlace& place) const {
    for (size_t i = 0; i < m_rows.size(); ++i)
        if (m_rows[i].part == place.part && m_rows[i].colony == place.colony)
            return index(static_cast<int>(i), static_cast<int>(core::kit::states().indexOf(place.state)) + 1);
    return {};
}

int KitModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int KitModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(core::kit::states().size()) + 1;
}

QString KitModel::text(const Row& row, int column) const {
    if (column == kKind) return row.colony ? KitWords::tr("%1 · off %2").arg(row.part, row.name) : row.part;
    const auto& count = row.counts[static_cast<size_t>(column - 1)];
    return count ? QString::number(*count) : look::dash();
}

QVariant KitModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = m_rows[static_cast<size_t>(index.row())];
    const bool counts = index.column() != kKind;
    switch (role) {
    case Qt::DisplayRole:
        return text(row, index.column());
    case Qt::TextAlignmentRole:
        return static_cast<int>(Qt::AlignVCenter | (counts ? Qt::AlignRight : Qt::AlignLeft));
    case Qt::ToolTipRole:
        return row.apart.isEmpty() ? QVariant() : row.apart;
    case Qt::ForegroundRole:
        if (!row.apart.isEmpty() && (!counts || stateAt(index.column()) == core::kit::kQuarantined))
            return m_colours.warnText;
        return counts && !countAt(index) ? QVariant(m_colours.quiet) : QVariant();
    case Qt::AccessibleTextRole:
        if (!counts) return row.apart.isEmpty() ? row.part : row.part + u' ' + row.apart;
        return KitWords::tr("%1, %2: %3")
            .arg(text(row, kKind), stateText(stateAt(index.column())),
                 countAt(index) ? text(row, index.column()) : KitWords::tr("not counted"));
    default:
        return {};
    }
}

QVariant KitModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>(Qt::AlignVCenter | (section == kKind ? Qt::AlignLeft : Qt::AlignRight));
    if (role != Qt::DisplayRole) return {};
    return section == kKind ? KitWords::tr("Kind of kit") : stateText(stateAt(section));
}

} // namespace ui::kit
