#include "core/edit/medicine_lines.h"

#include "core/edit/change_writer.h"
#include "core/edit/edit_checks.h"
#include "core/edit/session_private.h"
#include "core/model/row_codec.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace core::edit {

namespace {

using store::HistoryKind;

/// Treatment, then line.
using Lines = std::set<std::pair<qint64, qint64>>;

/// The row that a migration leaves for a book whose index is still to be made: no treatment has this number.
constexpr const char* kUnmade = "SELECT count(*) FROM medicine_line WHERE treatment = 0";
constexpr qsizetype kMostMedicineProblems = 20;

void takeRange(const RowRange& range, qint64 seq, Lines& lines) {
    if (range.table != Table::Treatment) return;
    for (qint64 i = 0; i < range.count; ++i) lines.emplace(range.firstId + i, seq);
}

void takeRecord(const HistoryRecord& record, HistoryKind kind, qint64 seq, Lines& lines) {
    for (const RowRange& range : record.inserted)
        if (kind != HistoryKind::Do) takeRange(range, seq, lines);
    for (const RowChange& row : record.rows)
        if (row.table == Table::Treatment && (row.before || kind != HistoryKind::Do)) lines.emplace(row.id, seq);
    for (const RowRange& range : record.deleted) takeRange(range, seq, lines);
}

bool ofTreatments(const HistoryRecord& record) {
    const auto is = [](const auto& x) { return x.table == Table::Treatment; };
    return std::any_of(record.rows.begin(), record.rows.end(), is) ||
           std::any_of(record.inserted.begin(), record.inserted.end(), is) ||
           std::any_of(record.deleted.begin(), record.deleted.end(), is);
}

Lines linesOfHistory(const store::Database& db) {
    Lines lines;
    store::eachHistory(db, [&](const store::HistoryRow& line) {
        const QByteArray changes = store::historyChanges(db, line.seq);
        if (ofTreatments(decodeKeys(changes))) takeRecord(decode(changes), line.kind, line.seq, lines);
    });
    return lines;
}

Lines storedLines(const store::Database& db) {
    Lines lines;
    store::Statement row = db.prepare("SELECT treatment, seq FROM medicine_line");
    while (row.step()) lines.emplace(row.integer(0), row.integer(1));
    return lines;
}

void write(const store::Database& db, const Lines& lines) {
    store::Statement add = db.prepare("INSERT INTO medicine_line (treatment, seq) VALUES (?, ?)");
    for (const auto& [treatment, seq] : lines) add.bind(1, treatment).bind(2, seq).run();
}

/// Reads what one line did to some treatments.
class LineReader {
public:
    LineReader(const store::Database& db, qint64 seq) : m_db(db), m_line(store::readHistory(db, seq)) {
        if (!m_line) return;
        m_record = decode(m_line->changes);
        for (const RowChange& row : m_record.rows)
            if (row.table == Table::Treatment) m_rows.emplace(row.id, &row);
    }

    void take(qint64 treatment, std::vector<MedicineChange>& changes) {
        if (!m_line) return;
        const HistoryLine shown = shownLine(*m_line);
        MedicineChange change{TreatmentId{treatment}, m_line->seq, shown.at, shown.by, shown.reason, {}, {}};
        if (const auto row = m_rows.find(treatment); row != m_rows.end()) {
            change.before = read(treatment, row->second->before);
            change.after = read(treatment, row->second->after);
        } else {
            change.before = read(treatment, inRange(treatment));
        }
        changes.push_back(std::move(change));
    }

private:
    static std::optional<Treatment> read(qint64 id, const std::optional<Row>& row) {
        return row ? std::optional(fromRow<Treatment>(id, *row)) : std::nullopt;
    }
    /// Of a range that the line deleted, unpacked once.
    std::optional<Row> inRange(qint64 treatment) {
        if (!m_unpacked) {
            m_unpacked = true;
            eachDeletedRow(m_db, m_line->seq, m_record, Table::Treatment,
                           [&](qint64 id, Row&& row) { m_deleted.emplace(id, std::move(row)); });
        }
        const auto at = m_deleted.find(treatment);
        return at == m_deleted.end() ? std::nullopt : std::optional(at->second);
    }

    const store::Database& m_db;
    std::optional<store::HistoryRow> m_line;
    HistoryRecord m_record;
    std::map<qint64, const RowChange*> m_rows;
    std::map<qint64, Row> m_deleted;
    bool m_unpacked = false;
};

} // namespace

void noteMedicine(const store::Database& db, qint64 seq, HistoryKind kind, const ChangeSet& change) {
    HistoryRecord record;
    for (const BulkInsert& range : change.bulk) record.inserted.push_back({range.table, range.firstId, range.count});
    for (const BulkDelete& range : change.gone) record.deleted.push_back({range.table, range.firstId, range.count});
    for (const RowChange& row : change.rows)
        if (row.table == Table::Treatment) record.rows.push_back(row);
    Lines lines;
    takeRecord(record, kind, seq, lines);
    write(db, lines);
}

void makeMedicineLines(const store::Database& db) {
    if (db.number(kUnmade) == 0) return;
    store::Transaction transaction(db);
    const Lines lines = linesOfHistory(db);
    db.exec("DELETE FROM medicine_line");
    write(db, lines);
    transaction.commit();
}

void needMedicineLines(const store::Database& db) { linesOfHistory(db); }

std::vector<MedicineChange> medicineChanges(const store::Database& db) {
    const store::ReadTransaction steady(db);
    const Lines lines = db.number(kUnmade) == 0 ? storedLines(db) : linesOfHistory(db);
    std::map<qint64, std::vector<qint64>> byLine;
    for (const auto& [treatment, seq] : lines) byLine[seq].push_back(treatment);
    std::vector<MedicineChange> changes;
    for (const auto& [seq, treatments] : byLine) {
        LineReader reader(db, seq);
        for (const qint64 treatment : treatments) reader.take(treatment, changes);
    }
    std::stable_sort(changes.begin(), changes.end(),
                     [](const auto& a, const auto& b) { return a.treatment < b.treatment; });
    return changes;
}

QStringList medicineLineProblems(const store::Database& db) {
    Lines expected;
    try {
        expected = linesOfHistory(db);
    } catch (const Error&) {
        return {}; // a line that cannot be read: the check of the history names it
    }
    const Lines found = storedLines(db);
    QStringList problems;
    const auto tell = [&](const Lines& some, const Lines& others, const QString& sentence) {
        for (const auto& line : some)
            if (!others.contains(line) && problems.size() < kMostMedicineProblems)
                problems << sentence.arg(line.first).arg(line.second);
    };
    tell(expected, found, Edits::tr("The medicine book does not know that treatment %1 was altered by line %2."));
    tell(found, expected, Edits::tr("The medicine book says of treatment %1 that line %2 altered it; it did not."));
    return problems;
}

} // namespace core::edit
