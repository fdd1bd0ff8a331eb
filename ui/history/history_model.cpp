#include "ui/history/history_model.h"

#include "ui/history/history_words.h"
#include "ui/look/words.h"

#include <QBrush>
#include <QFont>

#include <algorithm>
#include <set>

namespace ui::history {

using core::edit::HistoryLine;
using core::edit::HistoryPage;

namespace {
constexpr int kPage = 100;
constexpr int kLook = 800;
constexpr int kMostNewer = 300;
} // namespace

HistoryModel::HistoryModel(const core::edit::Session& session, Dialogs& dialogs, QObject* parent)
    : QAbstractTableModel(parent), m_session(session), m_dialogs(dialogs) {
    m_scan.setSingleShot(true);
    m_scan.setInterval(0);
    connect(&m_scan, &QTimer::timeout, this, &HistoryModel::lookOn);
    startAgain();
}

void HistoryModel::setFilter(const core::edit::HistoryFilter& filter) {
    if (filter == m_filter) return;
    m_filter = filter;
    startAgain();
}

void HistoryModel::setQuiet(const QColor& quiet) {
    m_quiet = quiet;
    if (!m_lines.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, kColumns - 1), {Qt::ForegroundRole});
}

void HistoryModel::startAgain() {
    beginResetModel();
    m_scan.stop();
    m_lines.clear();
    m_before.reset();
    m_more = false; // nothing is fetched while the model is being reset
    guarded(m_dialogs, [this] {
        const auto newest = m_session.history(1);
        m_newest = newest.empty() ? 0 : newest.front().seq;
    });
    endResetModel();
    m_more = true;
    m_wanted = kPage;
    lookOn();
}

void HistoryModel::lookOn() {
    bool read = false;
    guarded(m_dialogs, [&] {
        takePage();
        read = true;
    });
    if (!read) m_more = false; // said once
    if (m_more && m_lines.size() < m_wanted) m_scan.start();
    emit looked();
}

void HistoryModel::takePage() {
    HistoryPage page = m_session.historyPage(m_filter, m_before, kPage, kLook);
    m_before = page.next; // before the view hears of rows: it may ask for more at once
    m_more = page.next.has_value();
    if (!page.lines.empty()) {
        const int first = rowCount();
        beginInsertRows({}, first, first + static_cast<int>(page.lines.size()) - 1);
        std::move(page.lines.begin(), page.lines.end(), std::back_inserter(m_lines));
        endInsertRows();
    }
}

void HistoryModel::refresh() {
    guarded(m_dialogs, [this] { takeNewer(); });
}

void HistoryModel::takeNewer() {
    const auto newest = m_session.history(1);
    const qint64 count = newest.empty() ? 0 : newest.front().seq - m_newest;
    if (count == 0) return;
    if (count < 0 || count > kMostNewer) return startAgain();
    // Lines are numbered without a gap: the newest so many.
    const auto all = m_session.historyPage({}, {}, static_cast<int>(count), static_cast<int>(count)).lines;
    const auto fitting = m_session.historyPage(m_filter, {}, static_cast<int>(count), static_cast<int>(count)).lines;
    m_newest += count;
    mark(all);
    if (fitting.empty()) return;
    beginInsertRows({}, 0, static_cast<int>(fitting.size()) - 1);
    m_lines.insert(m_lines.begin(), fitting.begin(), fitting.end());
    endInsertRows();
    emit looked();
}

/// The newest line of a step says how it stands.
void HistoryModel::mark(const std::vector<HistoryLine>& newer) {
    std::set<qint64> told;
    for (const HistoryLine& line : newer) {
        if (!line.of || !told.insert(*line.of).second) continue;
        const auto row = rowOf(*line.of);
        if (!row) continue;
        m_lines[static_cast<size_t>(*row)].takenBack = line.kind == HistoryLine::Kind::Undo;
        emit dataChanged(index(*row, 0), index(*row, kColumns - 1));
    }
}

std::optional<int> HistoryModel::rowOf(qint64 seq) const {
    const auto at = std::lower_bound(m_lines.begin(), m_lines.end(), seq,
                                     [](const HistoryLine& line, qint64 s) { return line.seq > s; });
    if (at == m_lines.end() || at->seq != seq) return std::nullopt;
    return static_cast<int>(at - m_lines.begin());
}

int HistoryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int HistoryModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : kColumns; }

bool HistoryModel::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && m_more && !m_scan.isActive();
}

void HistoryModel::fetchMore(const QModelIndex& parent) {
    if (!canFetchMore(parent)) return;
    m_wanted = m_lines.size() + kPage;
    lookOn();
}

QString HistoryModel::textOf(const HistoryLine& line, Column column) const {
    switch (column) {
    case Column::When:
        return whenText(line.at, m_session.clock().nowUtc());
    case Column::What:
        return line.text;
    case Column::By:
        return line.by.isEmpty() ? look::dash() : line.by;
    case Column::Note:
        return noteText(line);
    }
    return {};
}

QVariant HistoryModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const HistoryLine& line = lineAt(index.row());
    const auto column = static_cast<Column>(index.column());
    switch (role) {
    case Qt::DisplayRole:
        return textOf(line, column);
    case Qt::ToolTipRole:
        return column == Column::What || column == Column::Note ? textOf(line, column) : QVariant();
    case Qt::AccessibleTextRole:
        return column == Column::What ? spokenText(line, m_session.clock().nowUtc()) : textOf(line, column);
    case Qt::FontRole: {
        if (!line.takenBack || column != Column::What) return {};
        QFont struck;
        struck.setStrikeOut(true);
        return struck;
    }
    case Qt::ForegroundRole:
        return (line.takenBack || column != Column::What) && m_quiet.isValid() ? QVariant(QBrush(m_quiet)) : QVariant();
    case SeqRole:
        return line.seq;
    case TakenBackRole:
        return line.takenBack;
    default:
        return {};
    }
}

QVariant HistoryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (static_cast<Column>(section)) {
    case Column::When:
        return tr("When");
    case Column::What:
        return tr("What was done");
    case Column::By:
        return tr("By");
    case Column::Note:
        return tr("Remark");
    }
    return {};
}

} // namespace ui::history
