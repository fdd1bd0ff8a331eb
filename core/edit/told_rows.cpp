#include "core/edit/told_rows.h"

#include "core/edit/change_writer.h"
#include "core/store/history_rows.h"
#include "core/store/migration.h"
#include "core/store/row_store.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr size_t kMostMissing = 100'000;
/// Rows that ranges of all lines may name for each page of the file: more than were ever in one are an invention, and
/// their numbers alone would fill the memory.
constexpr qint64 kRangedAPage = 4096;

qint64 rangedIn(const HistoryRecord& record) {
    qint64 rows = 0;
    for (const auto* ranges : {&record.inserted, &record.deleted})
        for (const RowRange& range : *ranges) rows = std::min(rows + range.count, qint64(1) << 60);
    return rows;
}

/// The kinds of box that come with each book: no line made them.
const std::map<qint64, Row>& shippedBoxes() {
    static const auto boxes = [] {
        std::map<qint64, Row> rows;
        const auto fresh = store::Database::inMemory(store::bookMigrations());
        store::eachRow(*fresh, Table::BoxKind, [&](qint64 id, Row&& row) { rows.emplace(id, std::move(row)); });
        return rows;
    }();
    return boxes;
}

bool sameText(const store::HistoryRow& a, const store::HistoryRow& b) {
    return a.at == b.at && a.by == b.by && a.sentence == b.sentence && a.changes == b.changes;
}

std::optional<HistoryRecord> decoded(const QByteArray& changes) {
    try {
        return decode(changes);
    } catch (const Error&) {
        return std::nullopt;
    }
}

/// Whether something says that lines came after the last one that is there: rows kept by a later one, or records where
/// there is none at all.
bool moreWasWritten(const store::Remains& remains, qint64 lastLine) {
    if (std::ranges::any_of(remains.parts(), [&](const store::Remains::Part& part) { return part.seq > lastLine; }))
        return true;
    for (int i = 0; lastLine == 0 && i < kTableCount; ++i) {
        const auto table = static_cast<Table>(i);
        if (table != Table::BoxKind && !remains.table(table).rows.empty()) return true;
    }
    return false;
}

std::vector<Row> unpackedRows(Table table, const store::Remains::Part& part) {
    try {
        return decodeRows(table, part.rows);
    } catch (const Error&) {
        return {};
    }
}

} // namespace

ToldRows::ToldRows(const store::Remains& remains, const store::Database* backup)
    : m_remains(remains), m_backup(backup) {
    if (m_backup) compareLines();
    if (!m_backupAgrees) m_backup = nullptr;
    m_backupLast = m_backup ? m_backup->number("SELECT max(seq) FROM history") : 0;
    m_lastLine = m_backupLast;
    if (!remains.history().rows.empty()) m_lastLine = std::max(m_lastLine, remains.history().rows.rbegin()->first);
    for (const store::Remains::Part& part : remains.parts())
        m_parts.insert_or_assign({part.seq, part.ofRange, part.part}, &part);
    findMissing();
}

void ToldRows::compareLines() {
    m_backupAgrees = m_remains.bookId() == m_backup->bookId();
    if (!m_backupAgrees && !m_remains.bookId().isEmpty()) return;
    for (const auto& [seq, found] : m_remains.history().rows) {
        const auto there = store::readHistory(*m_backup, seq);
        if (!there) break;
        const auto here = m_remains.line(seq);
        if (!here || !found.sure) continue;
        if (!sameText(*here, *there)) {
            m_backupAgrees = false;
            return;
        }
        m_backupAgrees = true;
    }
}

void ToldRows::findMissing() {
    m_endMissing = m_remains.history().mayLack(INT64_MAX) || moreWasWritten(m_remains, m_lastLine);
    qint64 mayRange = m_remains.pages() * kRangedAPage;
    if (m_lastLine - m_backupLast > mayRange) { // no line has such a number: of those there are, none is sure
        m_lastLine = m_backupLast + mayRange;
        m_endMissing = true;
    }
    for (qint64 seq = m_backupLast + 1; seq <= m_lastLine; ++seq) {
        const auto found = line(seq);
        const auto record = found ? decoded(found->changes) : std::nullopt;
        if (const qint64 rows = record ? rangedIn(*record) : 0; record && rows <= mayRange) {
            mayRange -= rows;
            take(*record, *found);
            continue;
        }
        m_missingFrom = seq;
        if (m_missing.size() < kMostMissing) m_missing.push_back(seq);
    }
    if (m_endMissing) m_missingFrom = INT64_MAX;
}

void ToldRows::take(const HistoryRecord& record, const store::HistoryRow& line) {
    for (const RowRange& rows : record.inserted) takeRange(broughtBack(rows, line));
    for (const RowChange& change : record.rows)
        m_touched[static_cast<size_t>(change.table)].insert_or_assign(change.id, Touched{change.after, line.seq});
    for (const RowRange& rows : record.deleted) takeRange({rows, line.seq, false});
    m_undone.insert_or_assign(line.ofSeq.value_or(line.seq), Undone{line.seq, record.deleted});
}

void ToldRows::takeRange(const Range& range) {
    const RowRange& rows = range.rows;
    auto& touched = m_touched[static_cast<size_t>(rows.table)];
    touched.erase(touched.lower_bound(rows.firstId), touched.lower_bound(rows.firstId + rows.count));
    m_ranges[static_cast<size_t>(rows.table)].push_back(range);
}

/// An undo or redo brings back what the line before of its step deleted, where no line between may say otherwise.
ToldRows::Range ToldRows::broughtBack(const RowRange& rows, const store::HistoryRow& line) const {
    Range range{rows, line.seq};
    const auto undone = line.ofSeq ? m_undone.find(*line.ofSeq) : m_undone.end();
    if (undone == m_undone.end() || m_missingFrom > undone->second.seq) return range;
    const auto& deleted = undone->second.deleted;
    const auto same = std::ranges::find(deleted, rows);
    if (same == deleted.end()) return range;
    range.keptBy = undone->second.seq;
    range.keptAs = static_cast<int>(same - deleted.begin());
    return range;
}

std::optional<Row> ToldRows::keptRow(const Range& range, qint64 id) const {
    if (range.keptBy == 0) return std::nullopt;
    const qint64 at = id - range.rows.firstId;
    const std::array<qint64, 3> name{range.keptBy, range.keptAs, at / kRowsAPart};
    if (m_unpacked.part != name) {
        const auto part = m_parts.find(name);
        m_unpacked = {name, part == m_parts.end() ? std::vector<Row>() : unpackedRows(range.rows.table, *part->second)};
    }
    const qint64 expected = std::min<qint64>(kRowsAPart, range.rows.count - at / kRowsAPart * kRowsAPart);
    if (std::ssize(m_unpacked.rows) != expected) return std::nullopt; // torn, or of something else
    return m_unpacked.rows[static_cast<size_t>(at % kRowsAPart)];
}

ToldRows::Told ToldRows::of(Table table, qint64 id) const {
    Told told;
    const auto& touched = m_touched[static_cast<size_t>(table)];
    const auto& ranges = m_ranges[static_cast<size_t>(table)];
    const auto in = [id](const Range& r) { return id >= r.rows.firstId && id < r.rows.firstId + r.rows.count; };
    if (const auto at = touched.find(id); at != touched.end()) {
        told.exists = at->second.row.has_value();
        told.row = at->second.row;
        told.seq = at->second.seq;
    } else if (const auto range = std::find_if(ranges.rbegin(), ranges.rend(), in); range != ranges.rend()) {
        told.exists = range->there;
        told.row = keptRow(*range, id);
        told.seq = range->seq;
    } else if (m_backup) {
        told.row = store::readRow(*m_backup, table, id);
        told.exists = told.row.has_value();
        told.seq = m_backupLast;
        told.byBackup = true;
    } else if (table == Table::BoxKind && shippedBoxes().contains(id)) {
        told.row = shippedBoxes().at(id);
        told.exists = true;
    }
    told.firm = m_missingFrom <= told.seq;
    return told;
}

void ToldRows::addIds(Table table, std::set<qint64>& ids) const {
    for (const auto& [id, touched] : m_touched[static_cast<size_t>(table)]) ids.insert(id);
    for (const Range& range : m_ranges[static_cast<size_t>(table)])
        for (qint64 i = 0; i < range.rows.count; ++i) ids.insert(range.rows.firstId + i);
    if (table == Table::BoxKind)
        for (const auto& [id, row] : shippedBoxes()) ids.insert(id);
    if (m_backup) store::eachRow(*m_backup, table, [&](qint64 id, Row&&) { ids.insert(id); });
}

std::optional<store::HistoryRow> ToldRows::line(qint64 seq) const {
    if (m_backup && seq <= m_backupLast) return store::readHistory(*m_backup, seq);
    const auto& lines = m_remains.history().rows;
    const auto at = lines.find(seq);
    return at != lines.end() && at->second.sure ? m_remains.line(seq) : std::nullopt;
}

} // namespace core::edit
