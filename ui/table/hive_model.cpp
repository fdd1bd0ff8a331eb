#include "ui/table/hive_model.h"

#include "core/base/natural_order.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"

namespace ui::table {

HiveModel::Row HiveModel::rowFor(const desk::Reading& r, const core::rules::ColonyFacts& f) {
    Row row;
    const auto put = [&row](Column c, const QString& text) { row.text[static_cast<size_t>(c)] = text; };
    row.colony = r.snapshot.colony(f.colony).id;
    put(Column::Label, r.snapshot.colony(f.colony).shown);
    if (const core::SnapStay* stay = r.snapshot.placeOf(f.colony)) put(Column::Stand, stay->standName);
    put(Column::Strength, f.strength ? core::framesText(*f.strength) : look::dash());
    row.strength = f.strength ? f.strength->value : -1;
    put(Column::Class, f.strengthClass ? look::classText(*f.strengthClass) : look::dash());
    put(Column::Boxes, QString::number(f.boxes));
    put(Column::Queen, look::queenText(f.queen));
    QStringList holds;
    for (const core::rules::Hold& h : r.holdsOf(f.colony)) holds << look::holdTitle(h.kind);
    put(Column::Holds, holds.isEmpty() ? look::dash() : holds.join(QStringLiteral("; ")));
    QString plan = look::dash();
    if (const core::rules::Union* u = r.unionOf(f.colony))
        plan = u->moved == f.colony ? tr("%1: to %2").arg(u->order).arg(r.snapshot.colony(u->host).shown)
                                    : tr("%1: host of %2").arg(u->order).arg(r.snapshot.colony(u->moved).shown);
    for (const core::rules::ShakeOut& s : r.plan.shakeOuts)
        if (s.colony == f.colony) plan = tr("shaken out before %1").arg(r.snapshot.colony(s.into).shown);
    put(Column::Plan, plan);
    const auto visit = r.snapshot.latestOf(f.colony).visit;
    put(Column::LastVisit, visit ? look::dayText(*visit) : look::dash());
    row.visited = visit ? visit->number : 0;
    const QStringList asked = r.askedOf(f.colony);
    put(Column::Asked, asked.isEmpty() ? look::dash() : asked.join(QStringLiteral("; ")));
    return row;
}

void HiveModel::show(const desk::Reading& reading, std::optional<core::YardIx> yard) {
    beginResetModel();
    m_rows.clear();
    for (const core::rules::ColonyFacts& f : reading.facts)
        if (yard && f.yard == *yard) m_rows.push_back(rowFor(reading, f));
    endResetModel();
}

std::optional<int> HiveModel::rowOf(core::ColonyId colony) const {
    for (size_t i = 0; i < m_rows.size(); ++i)
        if (m_rows[i].colony == colony) return static_cast<int>(i);
    return std::nullopt;
}

int HiveModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int HiveModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kColumns; }

QVariant HiveModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = m_rows[static_cast<size_t>(index.row())];
    const auto column = static_cast<Column>(index.column());
    const QString& text = row.text[static_cast<size_t>(index.column())];
    switch (role) {
    case Qt::DisplayRole:
        return text;
    case Qt::AccessibleTextRole:
        return headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() + QStringLiteral(": ") +
               (text == look::dash() ? tr("not recorded or none") : text);
    case Qt::TextAlignmentRole:
        return column == Column::Strength || column == Column::Boxes ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                                                     : QVariant();
    case SortRole:
        if (column == Column::Strength) return row.strength;
        if (column == Column::LastVisit) return row.visited;
        return text;
    case ColonyRole:
        return row.colony.value;
    default:
        return {};
    }
}

QVariant HiveModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (static_cast<Column>(section)) {
    case Column::Label:
        return tr("Hive");
    case Column::Stand:
        return tr("Stand");
    case Column::Strength:
        return tr("Frames");
    case Column::Class:
        return tr("Strength");
    case Column::Boxes:
        return tr("Boxes");
    case Column::Queen:
        return tr("Queen");
    case Column::Holds:
        return tr("Held");
    case Column::Plan:
        return tr("Plan");
    case Column::LastVisit:
        return tr("Last visit");
    case Column::Asked:
        return tr("Found by");
    }
    return {};
}

bool HiveSorter::lessThan(const QModelIndex& a, const QModelIndex& b) const {
    const QVariant left = a.data(HiveModel::SortRole);
    const QVariant right = b.data(HiveModel::SortRole);
    if (left.typeId() == QMetaType::LongLong) return left.toLongLong() < right.toLongLong();
    return core::naturalCompare(left.toString(), right.toString()) < 0;
}

} // namespace ui::table
