#include "ui/health/medicine_model.h"

#include "core/report/medicine_words.h"
#include "ui/look/words.h"

#include <QFont>

#include <algorithm>

namespace ui::health {

namespace report = core::report;
namespace rules = core::rules;

void MedicineModel::show(const rules::MedicineBook* book, std::vector<rules::MedicineEntry> entries) {
    beginResetModel();
    m_book = book;
    m_entries = std::move(entries);
    std::reverse(m_entries.begin(), m_entries.end()); // the newest first
    endResetModel();
}

int MedicineModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

int MedicineModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 7; }

QString MedicineModel::text(const rules::MedicineEntry& entry, Column column) const {
    const core::Treatment& t = entry.row;
    switch (column) {
    case Column::Day:
        return core::isoText(t.day);
    case Column::Colonies:
        return t.yard ? tr("%1 (%2 hives)").arg(m_book->subject(t)).arg(entry.colonies.size()) : m_book->subject(t);
    case Column::Product:
        return tr("%1 (%2)").arg(t.product, t.substance);
    case Column::Given:
        return t.quantity ? QStringLiteral("%1 %2").arg(QString::number(*t.quantity, 'g', 12), t.unit).trimmed()
                          : look::dash();
    case Column::Withdrawal:
        return entry.struck ? look::dash() : report::withdrawalText(entry);
    case Column::Missing: {
        const auto missing = rules::medicineMissing(*m_book, entry);
        return entry.struck || missing.empty() ? look::dash() : tr("%1 fields").arg(missing.size());
    }
    case Column::State:
        break;
    }
    if (entry.struck) return tr("taken back");
    const bool corrected = std::any_of(entry.changes.begin(), entry.changes.end(),
                                       [](const core::MedicineChange& c) { return !c.reason.isEmpty(); });
    return corrected ? tr("corrected") : entry.changes.empty() ? look::dash() : tr("added to");
}

QVariant MedicineModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& entry = at(index.row());
    const auto column = static_cast<Column>(index.column());
    if (role == Qt::FontRole && entry.struck && column != Column::State) {
        QFont font;
        font.setStrikeOut(true);
        return font;
    }
    if (role == Qt::AccessibleTextRole)
        return entry.struck ? tr("struck through: %1").arg(text(entry, column)) : text(entry, column);
    if (role == Qt::ToolTipRole && column == Column::Missing && !entry.struck)
        return report::missingText(rules::medicineMissing(*m_book, entry));
    return role == Qt::DisplayRole ? QVariant(text(entry, column)) : QVariant();
}

QVariant MedicineModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const QString titles[] = {tr("First day"), tr("Colony or yard"), tr("Product"),   tr("Quantity"),
                              tr("Missing"),   tr("Altered"),        tr("Withdrawal")};
    return titles[section];
}

void StripsModel::show(const rules::MedicineBook* book, std::vector<rules::StripsIn> strips) {
    beginResetModel();
    m_book = book;
    m_strips = std::move(strips);
    endResetModel();
}

int StripsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_strips.size());
}

int StripsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 5; }

QVariant StripsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    const rules::StripsIn& in = at(index.row());
    const auto& treatments = m_book->rows().treatments;
    const auto of = std::find_if(treatments.begin(), treatments.end(),
                                 [&](const core::Treatment& t) { return t.id == in.treatment; });
    switch (static_cast<Column>(index.column())) {
    case Column::Due: {
        const int late = m_book->today() - in.due;
        if (late > 0) return tr("%1, %2 days ago").arg(core::isoText(in.due)).arg(late);
        return core::isoText(in.due);
    }
    case Column::Hive:
        return m_book->name(in.hive, m_book->today());
    case Column::Treated:
        return of == treatments.end() ? QString()
               : in.hive == in.colony
                   ? core::isoText(of->day)
                   : tr("%1, in %2 united into it").arg(core::isoText(of->day), m_book->name(in.colony, of->day));
    case Column::Product:
        return of == treatments.end() ? QString() : of->product;
    case Column::Yard:
        break;
    }
    return m_book->yardNow(in.hive);
}

QVariant StripsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const QString titles[] = {tr("Due"), tr("Hive"), tr("Treated"), tr("Product"), tr("Yard")};
    return titles[section];
}

} // namespace ui::health
