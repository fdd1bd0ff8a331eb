#include "core/edit/change_writer.h"

#include "core/base/damaged.h"
#include "core/edit/edit_checks.h"
#include "core/edit/unpacked.h"
#include "core/store/history_parts.h"
#include "core/store/note_words.h"
#include "core/store/row_store.h"

#include <QDataStream>
#include <QIODevice>

#include <algorithm>
#include <memory>
#include <utility>

namespace core::edit {

namespace {

constexpr qint64 kWordsAtOnce = 2'000; ///< records whose words go in or out in one statement

[[noreturn]] void changedMeanwhile(const QString& detail) {
    throw Error(Error::Kind::BadData,
                Edits::tr("A record of this was changed meanwhile. Nothing was written: look at it again and retry."),
                detail);
}

[[noreturn]] void rangeDamaged(const QString& detail) {
    throw Damaged(Edits::tr("The rows that this would bring back cannot be read from the book's history."), detail);
}

QString placeText(Table table, qint64 id) {
    return QStringLiteral("%1 %2").arg(QLatin1StringView(tableName(table))).arg(id);
}

void writeOne(const store::Database& db, const RowChange& change) {
    if (store::readRow(db, change.table, change.id) != change.before)
        changedMeanwhile(placeText(change.table, change.id));
    store::writeRow(db, change);
    store::wordsOfRow(db, change);
}

/// The words of a range, a stretch at a time.
void inStretches(const store::Database& db, Table table, qint64 firstId, qint64 count, Ticker& ticker,
                 void (*words)(const store::Database&, Table, qint64 firstId, qint64 count)) {
    if (!store::notesOf(table)) return;
    for (qint64 done = 0; done < count; done += kWordsAtOnce) {
        words(db, table, firstId + done, std::min(kWordsAtOnce, count - done));
        if (count > kWordsAtOnce) ticker.look();
    }
}

void insertRange(const store::Database& db, const BulkInsert& range, Ticker& ticker) {
    {
        store::BulkInserter inserter(db, range.table);
        for (qint64 i = 0; i < range.count; ++i) {
            inserter.insert(range.firstId + i, range.row(i));
            ticker.tick();
        }
    }
    inStretches(db, range.table, range.firstId, range.count, ticker, store::wordsOfNewRange);
}

/// Packs the rows of a range into the line's parts, then deletes them.
void deleteRange(const store::Database& db, qint64 seq, int number, const BulkDelete& range, Ticker& ticker) {
    std::vector<Row> rows;
    int part = 0;
    qint64 found = 0;
    const auto flush = [&] {
        if (!rows.empty()) store::addHistoryPart(db, seq, number, part++, encodeRows(range.table, rows));
        rows.clear();
    };
    store::eachRowIn(db, range.table, range.firstId, range.count, [&](qint64, Row&& row) {
        ++found;
        rows.push_back(std::move(row));
        if (std::ssize(rows) == kRowsAPart) flush();
        ticker.tick();
    });
    flush();
    if (found != range.count) changedMeanwhile(placeText(range.table, range.firstId));
    inStretches(db, range.table, range.firstId, range.count, ticker, store::dropWordsOfRange);
    store::deleteRange(db, range.table, range.firstId, range.count);
    if (range.count > kWordsAtOnce) ticker.look();
}

/// Reads packed rows one after the other.
class PartReader {
public:
    PartReader(const store::Database& db, Table table, qint64 seq, int range)
        : m_db(db), m_table(table), m_seq(seq), m_range(range) {}

    Row next() {
        if (m_at == m_rows.size()) {
            const auto bytes = store::historyPart(m_db, m_seq, m_range, m_part++);
            if (!bytes) rangeDamaged(QStringLiteral("line %1, range %2").arg(m_seq).arg(m_range));
            m_rows = decodeRows(m_table, *bytes);
            m_at = 0;
            if (m_rows.empty()) rangeDamaged(QStringLiteral("line %1, range %2, empty").arg(m_seq).arg(m_range));
        }
        return std::move(m_rows[m_at++]);
    }

private:
    const store::Database& m_db;
    Table m_table;
    qint64 m_seq;
    int m_range;
    int m_part = 0;
    std::vector<Row> m_rows;
    size_t m_at = 0;
};

Ticker tickerOf(const ChangeSet& change, const Progress& progress) {
    auto rows = static_cast<qint64>(change.rows.size());
    for (const BulkInsert& range : change.bulk) rows += range.count;
    for (const BulkDelete& range : change.gone) rows += range.count;
    return Ticker(progress.part(0, 1, Edits::tr("Writing the rows into the book")), rows);
}

HistoryRecord recordOf(const ChangeSet& change) {
    HistoryRecord record;
    for (const BulkInsert& range : change.bulk) record.inserted.push_back({range.table, range.firstId, range.count});
    record.rows = change.rows;
    for (const BulkDelete& range : change.gone) record.deleted.push_back({range.table, range.firstId, range.count});
    return record;
}

QByteArray packedAttachments(const std::vector<Attachment>& attachments) {
    if (attachments.empty()) return {};
    QByteArray bytes;
    QDataStream out(&bytes, QIODevice::WriteOnly);
    out.setVersion(QDataStream::Qt_6_0);
    out << quint8(1) << static_cast<quint32>(attachments.size());
    for (const Attachment& a : attachments) out << a.name << qCompress(a.text, 1);
    return bytes;
}

constexpr qint64 kMostText = qint64(1) << 30; ///< of one file of an import

} // namespace

qint64 writeChange(const store::Database& db, const ChangeSet& change, store::HistoryRow line,
                   const Progress& progress) {
    Ticker ticker = tickerOf(change, progress);
    for (const BulkInsert& range : change.bulk) insertRange(db, range, ticker);
    for (const RowChange& row : change.rows) {
        writeOne(db, row);
        ticker.tick();
    }
    line.sentence = change.text;
    line.changes = encode(recordOf(change));
    line.attachments = packedAttachments(change.attachments);
    const qint64 seq = store::addHistory(db, line);
    int number = 0;
    for (const BulkDelete& range : change.gone) deleteRange(db, seq, number++, range, ticker);
    return seq;
}

ChangeSet reversal(const store::Database& db, qint64 seq) {
    const HistoryRecord record = decode(store::historyChanges(db, seq));
    ChangeSet back;
    back.rows = inverse(record.rows);
    for (size_t i = record.deleted.size(); i-- > 0;) {
        const RowRange& range = record.deleted[i];
        const auto reader = std::make_shared<PartReader>(db, range.table, seq, static_cast<int>(i));
        back.bulk.push_back({range.table, range.firstId, range.count, [reader](qint64) { return reader->next(); }});
    }
    for (size_t i = record.inserted.size(); i-- > 0;) {
        const RowRange& range = record.inserted[i];
        back.gone.push_back({range.table, range.firstId, range.count});
    }
    return back;
}

std::optional<Row> deletedRow(const store::Database& db, qint64 seq, const HistoryRecord& record, Table table,
                              qint64 id) {
    for (size_t i = 0; i < record.deleted.size(); ++i) {
        const RowRange& range = record.deleted[i];
        if (range.table != table || id < range.firstId || id >= range.firstId + range.count) continue;
        const qint64 at = id - range.firstId;
        const auto bytes = store::historyPart(db, seq, static_cast<int>(i), static_cast<int>(at / kRowsAPart));
        const auto rows = bytes ? decodeRows(table, *bytes) : std::vector<Row>();
        if (at % kRowsAPart < std::ssize(rows)) return rows[static_cast<size_t>(at % kRowsAPart)];
    }
    return std::nullopt;
}

void eachDeletedRow(const store::Database& db, qint64 seq, const HistoryRecord& record, Table table,
                    const std::function<void(qint64 id, Row&& row)>& take) {
    for (size_t i = 0; i < record.deleted.size(); ++i) {
        const RowRange& range = record.deleted[i];
        if (range.table != table) continue;
        PartReader reader(db, table, seq, static_cast<int>(i));
        for (qint64 n = 0; n < range.count; ++n) take(range.firstId + n, reader.next());
    }
}

std::vector<Attachment> attachmentsOf(const store::Database& db, qint64 seq) {
    const auto line = store::readHistory(db, seq);
    if (!line || line->attachments.isEmpty()) return {};
    QDataStream in(line->attachments);
    in.setVersion(QDataStream::Qt_6_0);
    quint8 version = 0;
    quint32 count = 0;
    in >> version >> count;
    std::vector<Attachment> attachments;
    for (quint32 i = 0; i < count && in.status() == QDataStream::Ok; ++i) {
        Attachment a;
        QByteArray packed;
        in >> a.name >> packed;
        auto text = unpacked(packed, kMostText);
        if (!text) in.setStatus(QDataStream::ReadCorruptData);
        a.text = std::move(text).value_or(QByteArray());
        attachments.push_back(std::move(a));
    }
    if (version != 1 || in.status() != QDataStream::Ok)
        throw Damaged(Edits::tr("The texts kept with a line of the history cannot be read."));
    return attachments;
}

} // namespace core::edit
