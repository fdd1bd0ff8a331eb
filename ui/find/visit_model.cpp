#include "ui/find/visit_model.h"

#include "core/edit/edit_context.h"

#include "ui/look/words.h"

#include <algorithm>

namespace ui::find {

namespace {

constexpr int kAtOnce = 1000;      // ids asked for at first; each time more are wanted, twice as many
constexpr int kPage = 64;          // rows read together
constexpr size_t kMostKept = 4096; // rows kept after they were seen

} // namespace

VisitModel::VisitModel(const core::edit::Session& session, Dialogs& dialogs, QObject* parent)
    : QAbstractTableModel(parent), m_session(session), m_dialogs(dialogs), m_most(kAtOnce) {}

void VisitModel::show(const core::VisitFilter& filter) {
    beginResetModel();
    m_filter = filter;
    m_most = kAtOnce;
    m_asked = true;
    m_lines.clear();
    try {
        m_unit = m_session.settings().showWeight;
        m_totals = m_session.visitTotals(m_filter);
        ask();
    } catch (...) {
        m_ids.clear();
        endResetModel();
        throw;
    }
    endResetModel();
}

void VisitModel::clear() {
    beginResetModel();
    m_asked = false;
    m_ids.clear();
    m_lines.clear();
    m_totals = {};
    endResetModel();
}

void VisitModel::ask() { m_ids = m_session.visitsFound(m_filter, m_order, m_most); }

void VisitModel::sort(int column, Qt::SortOrder order) {
    const auto key = column >= 0 ? sortKey(static_cast<VisitColumn>(column)) : std::nullopt;
    if (!key) return;
    m_order = {*key, order == Qt::DescendingOrder};
    if (!m_asked) return;
    beginResetModel();
    guarded(m_dialogs, [this] { ask(); });
    endResetModel();
}

bool VisitModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && m_asked && m_ids.size() == static_cast<size_t>(m_most);
}

void VisitModel::fetchMore(const QModelIndex&) {
    guarded(m_dialogs, [this] {
        const size_t had = m_ids.size();
        const auto more = m_session.visitsFound(m_filter, m_order, 2 * m_most);
        m_most *= 2;
        if (more.size() <= had) return;
        beginInsertRows({}, static_cast<int>(had), static_cast<int>(more.size()) - 1);
        m_ids = more; // the same order: those before are the same
        endInsertRows();
    });
}

VisitLine VisitModel::lineOf(const core::Visit& visit) const {
    VisitLine line{visit, {}, {}};
    if (const auto colony = m_session.colony(visit.colony)) line.colony = colony->label;
    std::optional<core::StandId> stand;
    for (const core::Placement& p : m_session.placementsOf(visit.colony))
        if (p.since <= visit.day && (!p.until || *p.until >= visit.day)) stand = p.stand;
    if (!stand) return line;
    m_session.read([&](const core::edit::EditContext& c) {
        if (const auto at = c.stand(*stand))
            if (const auto yard = c.find<core::Yard>(at->yard.value)) line.yard = yard->name;
    });
    return line;
}

/// The rows around this one. Where the book fails they stay unread, and it is said.
void VisitModel::readPage(int row) const {
    if (m_lines.size() > kMostKept) m_lines.clear();
    guarded(m_dialogs, [this, row] {
        const size_t from = static_cast<size_t>(row / kPage * kPage);
        const size_t to = std::min(from + kPage, m_ids.size());
        const std::vector<core::VisitId> page(m_ids.begin() + static_cast<std::ptrdiff_t>(from),
                                              m_ids.begin() + static_cast<std::ptrdiff_t>(to));
        for (const core::Visit& visit : m_session.visits(page)) m_lines.insert_or_assign(visit.id, lineOf(visit));
    });
    m_lines.try_emplace(visitAt(row)); // not read: it is not tried again with each painting
}

const VisitLine& VisitModel::lineAt(int row) const {
    if (!m_lines.contains(visitAt(row))) readPage(row);
    return m_lines.at(visitAt(row));
}

std::optional<int> VisitModel::rowOf(core::VisitId visit) const {
    const auto at = std::ranges::find(m_ids, visit);
    return at == m_ids.end() ? std::nullopt : std::optional(static_cast<int>(at - m_ids.begin()));
}

int VisitModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_ids.size());
}

int VisitModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kVisitColumns; }

QVariant VisitModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto column = static_cast<VisitColumn>(index.column());
    switch (role) {
    case Qt::DisplayRole:
        return cellText(lineAt(index.row()), column, m_unit);
    case Qt::ToolTipRole:
        return column == VisitColumn::Note ? QVariant(lineAt(index.row()).visit.note) : QVariant();
    case Qt::AccessibleTextRole: {
        const QString text = cellText(lineAt(index.row()), column, m_unit);
        return columnTitle(column) + QStringLiteral(": ") + (text == look::dash() ? tr("not recorded") : text);
    }
    case Qt::TextAlignmentRole:
        return isNumber(column) ? QVariant(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
    default:
        return {};
    }
}

QVariant VisitModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return columnTitle(static_cast<VisitColumn>(section));
}

} // namespace ui::find
