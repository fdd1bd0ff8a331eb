#include "core/edit/salvage_write.h"

#include "core/edit/change_writer.h"
#include "core/edit/edit_checks.h"
#include "core/edit/medicine_lines.h"
#include "core/edit/salvage_mend.h"
#include "core/edit/whole_book.h"
#include "core/store/history_parts.h"
#include "core/store/note_words.h"
#include "core/store/row_store.h"

#include <algorithm>
#include <set>

namespace core::edit {

namespace {

constexpr double kRowsWritten = 0.6; ///< of the way; then all is checked

/// Runs of ids that follow each other.
std::vector<RowRange> runsOf(const store::Database& db, Table table) {
    std::vector<RowRange> runs;
    store::Statement row = db.prepare(std::string("SELECT id FROM ") + tableName(table) + " ORDER BY id");
    while (row.step()) {
        const qint64 id = row.integer(0);
        if (!runs.empty() && id == runs.back().firstId + runs.back().count)
            ++runs.back().count;
        else
            runs.push_back({table, id, 1});
    }
    return runs;
}

/// Kinds of box are in a new book already: only what differs. Those that came later go before the hives in them; where
/// one of them has the name of a shipped kind, that gives way first.
void addBoxKinds(const store::Database& from, const store::Database& to, ChangeSet& change) {
    std::vector<RowChange> gone, altered, fresh;
    std::set<qint64> ids;
    std::set<Value> keys;
    for (const store::Database* db : {&from, &to})
        store::eachRow(*db, Table::BoxKind, [&](qint64 id, Row&& row) {
            ids.insert(id);
            if (db == &to) keys.insert(row[1]);
        });
    bool taken = false;
    for (const qint64 id : ids) {
        const auto before = store::readRow(to, Table::BoxKind, id);
        const auto after = store::readRow(from, Table::BoxKind, id);
        if (before == after) continue;
        taken = taken || (!before && keys.contains((*after)[1]));
        (!before ? fresh : after ? altered : gone).push_back({Table::BoxKind, id, before, after});
    }
    change.rows.insert(change.rows.end(), gone.begin(), gone.end());
    change.rows.insert(change.rows.end(), altered.begin(), altered.end());
    if (taken) {
        change.rows.insert(change.rows.end(), fresh.begin(), fresh.end());
        return;
    }
    for (const RowChange& row : fresh)
        change.bulk.push_back({Table::BoxKind, row.id, 1, [cells = *row.after](qint64) { return cells; }});
}

qint64 rowsIn(const store::Database& db) {
    qint64 rows = 0;
    for (int i = 0; i < kTableCount; ++i) rows += store::countRows(db, static_cast<Table>(i));
    return rows;
}

/// All rows as one change.
ChangeSet allRows(const store::Database& from, const store::Database& to, Ticker& ticker) {
    ChangeSet change;
    for (int i = 0; i < kTableCount; ++i) {
        const auto table = static_cast<Table>(i);
        if (table == Table::BoxKind) {
            addBoxKinds(from, to, change);
            continue;
        }
        for (const RowRange& run : runsOf(from, table))
            change.bulk.push_back({table, run.firstId, run.count, [&from, &ticker, run](qint64 at) {
                                       ticker.tick();
                                       return store::readRow(from, run.table, run.firstId + at).value_or(Row());
                                   }});
    }
    return change;
}

/// The rows past the history, which has them already.
void copyRows(const store::Database& from, const store::Database& to, Ticker& ticker) {
    to.exec("DELETE FROM box_kind");
    for (int i = 0; i < kTableCount; ++i) {
        const auto table = static_cast<Table>(i);
        store::BulkInserter inserter(to, table);
        store::eachRow(from, table, [&](qint64 id, Row&& row) {
            inserter.insert(id, row);
            ticker.tick();
        });
        for (const RowRange& run : runsOf(from, table)) store::wordsOfNewRange(to, table, run.firstId, run.count);
    }
}

/// A text kept with a line that cannot be read is lost; the line is not.
void dropTornTexts(const store::Database& db, qint64 seq, int& torn) {
    try {
        attachmentsOf(db, seq);
    } catch (const Error&) {
        db.prepare("UPDATE history SET attachments = NULL WHERE seq = ?").bind(1, seq).run();
        ++torn;
    }
}

void copyHistory(const SalvagedBook& book, const store::Database& to, int& torn) {
    for (qint64 seq = 1; seq <= book.told.lastLine(); ++seq)
        if (const auto line = book.told.line(seq)) dropTornTexts(to, store::addHistory(to, *line), torn);
    for (const store::Remains::Part& part : book.remains.parts())
        store::addHistoryPart(to, part.seq, part.ofRange, part.part, part.rows);
    to.prepare("UPDATE book SET uuid = ?").bind(1, book.remains.bookId()).run();
    to.exec("INSERT INTO medicine_line (treatment, seq) SELECT 0, max(seq) FROM history HAVING max(seq) IS NOT NULL");
}

/// What holds hives for doubt, as changes of the line.
void addDoubt(const SalvagedBook& book, const store::Database& to, ChangeSet& change) {
    if (book.note.isEmpty()) return;
    to.exec("SAVEPOINT doubt");
    holdForDoubt(to, book.note, book.day);
    std::vector<RowChange> after;
    for (const Table table : {Table::Visit, Table::VisitSign})
        store::eachRow(to, table, [&](qint64 id, Row&& row) {
            auto before = store::readRow(book.rows, table, id);
            if (before != row) after.push_back({table, id, std::move(before), std::move(row)});
        });
    to.exec("ROLLBACK TO doubt");
    to.exec("RELEASE doubt");
    change.rows.insert(change.rows.end(), after.begin(), after.end());
}

store::HistoryRow lineOf(const SalvagedBook& book) {
    store::HistoryRow line;
    line.at = book.at;
    return line;
}

} // namespace

QByteArray historyText(const ToldRows& told) {
    QString text;
    for (qint64 seq = 1; seq <= told.lastLine(); ++seq) {
        const auto line = told.line(seq);
        if (!line) {
            text += Edits::tr("%1  cannot be read").arg(seq) + u'\n';
            continue;
        }
        text += QStringLiteral("%1  %2  %3  %4").arg(seq).arg(line->at, line->by, line->sentence);
        if (!line->reason.isEmpty()) text += QStringLiteral("  [%1]").arg(line->reason);
        text += u'\n';
    }
    return text.toUtf8();
}

Written writeSalvaged(const SalvagedBook& book, const QString& path, const Progress& progress) {
    Written written;
    const auto db = store::Database::create(path);
    Ticker ticker(progress.part(0, kRowsWritten), rowsIn(book.rows));
    {
        store::Transaction transaction(*db);
        db->exec("PRAGMA defer_foreign_keys = ON"); // to the end of this transaction
        ChangeSet change;
        if (book.keepHistory) {
            copyRows(book.rows, *db, ticker);
            copyHistory(book, *db, written.tornTexts);
            addDoubt(book, *db, change);
        } else {
            change = allRows(book.rows, *db, ticker);
            change.attachments.push_back({QStringLiteral("history of before.txt"), historyText(book.told)});
        }
        change.text = book.sentence;
        change.attachments.push_back({QStringLiteral("what was salvaged.txt"), book.account.toUtf8()});
        const qint64 seq = writeChange(*db, change, lineOf(book));
        if (!book.keepHistory) noteMedicine(*db, seq, store::HistoryKind::Do, change);
        transaction.commit();
    }
    if (book.keepHistory) makeMedicineLines(*db);
    written.problems = bookProblems(*db, progress.part(kRowsWritten, 1));
    return written;
}

} // namespace core::edit
