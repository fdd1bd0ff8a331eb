#include "core/edit/history_check.h"

#include "core/base/damaged.h"
#include "core/edit/change_writer.h"
#include "core/edit/edit_checks.h"
#include "core/edit/history_codec.h"
#include "core/store/history_parts.h"
#include "core/store/history_rows.h"
#include "core/store/row_store.h"

#include <array>
#include <map>
#include <utility>

namespace core::edit {

namespace {

constexpr qsizetype kMostProblems = 20;

size_t hashOf(const Row& row) {
    size_t seed = 0;
    for (const Value& value : row) {
        seed = qHash(value.index(), seed);
        if (const auto* n = std::get_if<qint64>(&value)) seed = qHash(*n, seed);
        if (const auto* r = std::get_if<double>(&value)) seed = qHash(*r, seed);
        if (const auto* t = std::get_if<QString>(&value)) seed = qHash(*t, seed);
    }
    return seed;
}

/// What the lines so far say the tables hold.
class Told {
public:
    void take(const HistoryRecord& record) {
        for (const RowRange& range : record.inserted) addRange(range);
        for (const RowChange& change : record.rows) takeRow(change);
        for (const RowRange& range : record.deleted) dropRange(range);
    }

    QStringList problems(const store::Database& db) const {
        QStringList found;
        for (size_t i = 0; i < m_rows.size(); ++i) addRowProblems(db, static_cast<Table>(i), found);
        for (size_t i = 0; i < m_counts.size(); ++i) addCountProblem(db, static_cast<Table>(i), found);
        return found;
    }

private:
    /// Of a row that is not there: no hash.
    using Rows = std::map<qint64, std::optional<size_t>>;

    Rows& rowsOf(Table table) { return m_rows.at(static_cast<size_t>(table)); }
    qint64& countOf(Table table) { return m_counts.at(static_cast<size_t>(table)); }

    void addRange(const RowRange& range) {
        countOf(range.table) += range.count;
        forget(range);
    }
    void dropRange(const RowRange& range) {
        countOf(range.table) -= range.count;
        forget(range);
    }
    void forget(const RowRange& range) {
        Rows& rows = rowsOf(range.table);
        rows.erase(rows.lower_bound(range.firstId), rows.lower_bound(range.firstId + range.count));
    }
    void takeRow(const RowChange& change) {
        countOf(change.table) += (change.after ? 1 : 0) - (change.before ? 1 : 0);
        rowsOf(change.table)[change.id] = change.after ? std::optional(hashOf(*change.after)) : std::nullopt;
    }

    void addRowProblems(const store::Database& db, Table table, QStringList& found) const {
        for (const auto& [id, hash] : m_rows[static_cast<size_t>(table)]) {
            const auto row = store::readRow(db, table, id);
            if ((row ? std::optional(hashOf(*row)) : std::nullopt) == hash) continue;
            if (found.size() < kMostProblems)
                found << Edits::tr("Row %1 of table %2 is not as the history left it.")
                             .arg(id)
                             .arg(QLatin1StringView(tableName(table)));
        }
    }
    void addCountProblem(const store::Database& db, Table table, QStringList& found) const {
        // The shipped box kinds come with the book: no line made them.
        if (table == Table::BoxKind) return;
        const qint64 there = store::countRows(db, table);
        const qint64 told = m_counts[static_cast<size_t>(table)];
        if (there != told)
            found << Edits::tr("Table %1 has %2 rows; by the history it should have %3.")
                         .arg(QLatin1StringView(tableName(table)))
                         .arg(there)
                         .arg(told);
    }

    std::array<Rows, kTableCount> m_rows;
    std::array<qint64, kTableCount> m_counts{};
};

/// Rows that were deleted as a range lie packed in parts: their undo needs all of them.
qint64 rowsKept(const store::Database& db, qint64 seq, int ofRange, Table table) {
    qint64 kept = 0;
    for (int part = 0;; ++part) {
        const auto bytes = store::historyPart(db, seq, ofRange, part);
        if (!bytes) return kept;
        kept += static_cast<qint64>(decodeRows(table, *bytes).size());
    }
}

void checkKept(const store::Database& db, qint64 seq, const HistoryRecord& record) {
    for (size_t i = 0; i < record.deleted.size(); ++i) {
        const RowRange& range = record.deleted[i];
        const qint64 kept = rowsKept(db, seq, static_cast<int>(i), range.table);
        if (kept != range.count)
            throw Damaged(Edits::tr("Line %1 of the history keeps %2 of the %3 rows that it deleted from table %4.")
                              .arg(seq)
                              .arg(kept)
                              .arg(range.count)
                              .arg(QLatin1StringView(tableName(range.table))));
    }
    attachmentsOf(db, seq);
}

} // namespace

QStringList historyProblems(const store::Database& db) {
    Told told;
    try {
        store::eachHistory(db, [&](const store::HistoryRow& line) {
            const HistoryRecord record = decode(store::historyChanges(db, line.seq));
            checkKept(db, line.seq, record);
            told.take(record);
        });
    } catch (const Error& e) {
        return {e.userMessage()};
    }
    return told.problems(db);
}

} // namespace core::edit
