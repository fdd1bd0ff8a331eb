#include "core/edit/compare_books.h"

#include "core/edit/change_fields.h"
#include "core/edit/history_reader.h"
#include "core/edit/session_private.h"
#include "core/store/history_rows.h"
#include "core/store/row_store.h"

#include <algorithm>

namespace core::edit {

namespace {

using store::Access;
using store::Database;

bool sameLine(const std::optional<store::HistoryRow>& a, const std::optional<store::HistoryRow>& b) {
    return a && b && a->seq == b->seq && a->at == b->at && a->by == b->by && a->sentence == b->sentence &&
           a->reason == b->reason && a->kind == b->kind && a->ofSeq == b->ofSeq && a->changes == b->changes;
}

/// How many lines both begin with. Nothing is taken on trust: each is compared with all it holds.
qint64 sharedLines(const Database& here, const Database& there, const std::function<bool()>& stopped) {
    const qint64 most = std::min(lastLine(here), lastLine(there));
    qint64 seq = 0;
    while (seq < most && !(stopped && stopped()) && bothHave(here, there, seq + 1)) ++seq;
    return seq;
}

BooksCompared::Side sideOf(const Database& db, qint64 shared) {
    BooksCompared::Side side;
    side.version = static_cast<int>(db.number("PRAGMA user_version"));
    side.count = lastLine(db) - shared;
    store::eachHistoryBefore(db, {}, [&](const store::HistoryRow& row) {
        if (row.seq <= shared || side.lines.size() == kLinesCompared) return false;
        side.lines.push_back(lineNow(db, row));
        return true;
    });
    return side;
}

BooksStand standOf(const BooksCompared& c) {
    if (c.here.count > 0 && c.there.count > 0) return BooksStand::Parted;
    if (c.here.count > 0) return BooksStand::HereGoesOn;
    return c.there.count > 0 ? BooksStand::ThereGoesOn : BooksStand::Alike;
}

bool sameRows(const Database& here, const Database& there, Table table) {
    if (store::countRows(here, table) != store::countRows(there, table)) return false;
    bool same = true;
    store::eachRow(here, table,
                   [&](qint64 id, const Row& row) { same = same && store::readRow(there, table, id) == row; });
    return same;
}

QStringList tablesThatDiffer(const Database& here, const Database& there) {
    QStringList differ;
    for (int i = 0; i < kTableCount; ++i)
        if (const auto table = static_cast<Table>(i); !sameRows(here, there, table))
            differ << recordsText(table, 2).section(u' ', 1);
    return differ;
}

} // namespace

qint64 lastLine(const Database& db) { return db.number("SELECT max(seq) FROM history"); }

bool bothHave(const Database& here, const Database& there, qint64 seq) {
    return seq == 0 || sameLine(store::readHistory(here, seq), store::readHistory(there, seq));
}

BooksCompared compareBooks(const QString& here, const QString& there, const std::function<bool()>& stopped) {
    const auto a = Database::open(here, Access::ReadAsItIs);
    const auto b = Database::open(there, Access::ReadAsItIs);
    const store::ReadTransaction steadyHere(*a);
    const store::ReadTransaction steadyThere(*b);
    BooksCompared compared;
    const bool strangers = a->bookId() != b->bookId();
    compared.shared = strangers ? 0 : sharedLines(*a, *b, stopped);
    if (const auto line = store::readHistory(*a, compared.shared)) compared.lastShared = lineNow(*a, *line);
    compared.here = sideOf(*a, compared.shared);
    compared.there = sideOf(*b, compared.shared);
    compared.stand = strangers ? BooksStand::Strangers : standOf(compared);
    if (compared.stand == BooksStand::Alike && compared.here.version == compared.there.version)
        compared.differ = tablesThatDiffer(*a, *b);
    return compared;
}

BooksStand standOf(const Database& here, const Database& there) {
    if (here.bookId() != there.bookId()) return BooksStand::Strangers;
    const qint64 lastHere = lastLine(here);
    const qint64 lastThere = lastLine(there);
    if (!bothHave(here, there, std::min(lastHere, lastThere))) return BooksStand::Parted;
    if (lastHere == lastThere) return BooksStand::Alike;
    return lastHere > lastThere ? BooksStand::HereGoesOn : BooksStand::ThereGoesOn;
}

} // namespace core::edit
