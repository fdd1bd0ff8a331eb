#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/history_codec.h"
#include "tests/support/made_book.h"

#include <sqlite3.h>

namespace tests::edit {

EditTest::EditTest() {
    putBook(
        "empty", path(), [this](const QString& at) { Session::create(at, clock); },
        [this](const QString& at) { return Session::open(at, clock)->bookId(); });
    session = Session::open(path(), clock);
}

YardId EditTest::newYard(const QString& name) {
    Yard yard;
    yard.name = name;
    session->apply([&](const EditContext& c) { return core::edit::newYard(c, yard); });
    for (const Yard& y : session->yards())
        if (y.name == name) return y.id;
    throw std::runtime_error("no yard");
}

ColonyId EditTest::newColony(YardId yard, const QString& label, MmPoint at, Day since) {
    NewColony fresh;
    fresh.colony.label = label;
    fresh.colony.since = since;
    fresh.colony.box = BoxKindId{1};
    fresh.stand.yard = yard;
    fresh.stand.at = at;
    fresh.stand.name = label;
    std::optional<ColonyId> id;
    session->apply([&](const EditContext& c) {
        id = ColonyId{c.nextId(Table::Colony)};
        return addColony(c, fresh);
    });
    return *id;
}

std::optional<HistoryLine> EditTest::carry(ColonyId colony, MmPoint to, Day day) {
    return session->apply([&](const EditContext& c) { return carryHive(c, colony, to, day); });
}

std::optional<HistoryLine> EditTest::visit(const Visit& v) {
    return session->apply([&](const EditContext& c) { return logVisit(c, v); });
}

Stand EditTest::standOf(ColonyId colony) const {
    std::optional<Stand> stand;
    session->read([&](const EditContext& c) { stand = c.stand(c.openPlacement(colony).value().stand); });
    return stand.value();
}

std::vector<Stand> EditTest::stands(YardId yard) const { return session->standsOf(yard); }

Thrown thrownBy(const std::function<void()>& work) {
    try {
        work();
    } catch (const Error& e) {
        return {e.kind(), e.userMessage().toStdString()};
    }
    ADD_FAILURE() << "nothing was thrown";
    return {};
}

namespace {

struct RawBook {
    explicit RawBook(const QString& path) {
        if (sqlite3_open(path.toUtf8().constData(), &db) != SQLITE_OK) throw std::runtime_error("no book");
        sqlite3_busy_timeout(db, 5000);
    }
    ~RawBook() { sqlite3_close(db); }
    RawBook(const RawBook&) = delete;
    RawBook& operator=(const RawBook&) = delete;

    int run(const std::string& sql, int (*row)(void*, int, char**, char**) = nullptr, void* to = nullptr) {
        return sqlite3_exec(db, sql.c_str(), row, to, nullptr);
    }

    sqlite3* db = nullptr;
};

int addRow(void* to, int count, char** cells, char**) {
    auto& text = *static_cast<std::string*>(to);
    for (int i = 0; i < count; ++i) text += std::string(cells[i] ? cells[i] : "NULL") + '|';
    text += '\n';
    return 0;
}

} // namespace

std::string rowsText(const QString& path) {
    RawBook book(path);
    std::string text;
    for (int i = 0; i < kTableCount; ++i) {
        const std::string table = tableName(static_cast<Table>(i));
        text += table + '\n';
        if (book.run("SELECT * FROM " + table + " ORDER BY id", addRow, &text) != SQLITE_OK)
            throw std::runtime_error("cannot read " + table);
    }
    return text;
}

std::vector<RowChange> historyRows(const QString& path, qint64 seq) {
    RawBook book(path);
    sqlite3_stmt* read = nullptr;
    const std::string sql = "SELECT changes FROM history WHERE seq = " + std::to_string(seq);
    if (sqlite3_prepare_v2(book.db, sql.c_str(), -1, &read, nullptr) != SQLITE_OK || sqlite3_step(read) != SQLITE_ROW)
        throw std::runtime_error("no such line");
    const QByteArray bytes(static_cast<const char*>(sqlite3_column_blob(read, 0)), sqlite3_column_bytes(read, 0));
    sqlite3_finalize(read);
    return decode(bytes).rows;
}

void rawSql(const QString& path, const char* sql) {
    RawBook book(path);
    ASSERT_EQ(book.run(sql), SQLITE_OK) << sqlite3_errmsg(book.db);
}

} // namespace tests::edit
