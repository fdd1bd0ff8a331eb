#include "core/store/row_store.h"

#include <array>
#include <string>

namespace core::store {

namespace {

/// SQL of one table, made once.
struct TableSql {
    std::string select, selectRange, insert, upsert, update, erase, eraseRange, maxId, count;
};

std::string columnList(Table table, const char* before, const char* after) {
    std::string list;
    for (const char* column : columnsOf(table)) list += std::string(list.empty() ? "" : ", ") + before + column + after;
    return list;
}

TableSql sqlOf(Table table) {
    const std::string name = tableName(table);
    const std::string columns = columnList(table, "", "");
    std::string marks = "?";
    for (size_t i = 0; i < columnsOf(table).size(); ++i) marks += ", ?";
    TableSql sql;
    sql.select = "SELECT " + columns + " FROM " + name + " WHERE id = ?";
    sql.selectRange = "SELECT id, " + columns + " FROM " + name + " WHERE id BETWEEN ? AND ? ORDER BY id";
    sql.insert = "INSERT INTO " + name + " (id, " + columns + ") VALUES (" + marks + ")";
    sql.upsert = sql.insert;
    if (table == Table::Setting) sql.upsert += " ON CONFLICT (name) DO UPDATE SET value = excluded.value";
    sql.update = "UPDATE " + name + " SET " + columnList(table, "", " = ?") + " WHERE id = ?";
    sql.erase = "DELETE FROM " + name + " WHERE id = ?";
    sql.eraseRange = "DELETE FROM " + name + " WHERE id BETWEEN ? AND ?";
    sql.maxId = "SELECT max(id) FROM " + name;
    sql.count = "SELECT count(*) FROM " + name;
    return sql;
}

const TableSql& sqlFor(Table table) {
    static const auto all = [] {
        std::array<TableSql, kTableCount> made;
        for (size_t i = 0; i < made.size(); ++i) made[i] = sqlOf(static_cast<Table>(i));
        return made;
    }();
    return all[static_cast<size_t>(table)];
}

int cellCount(Table table) { return static_cast<int>(columnsOf(table).size()); }

void requireShape(Table table, const Row& row) {
    if (row.size() != columnsOf(table).size())
        throw Error(Error::Kind::Internal, QStringLiteral("A row for the book has a wrong number of cells."),
                    QLatin1String(tableName(table)));
}

void requireOne(const Database& db, const RowChange& change) {
    if (db.number("SELECT changes()") == 1) return;
    throw Error(Error::Kind::Internal, QStringLiteral("A row that was to be changed is not in the book any more."),
                QStringLiteral("%1 %2").arg(QLatin1String(tableName(change.table))).arg(change.id));
}

} // namespace

std::optional<Row> readRow(const Database& db, Table table, qint64 id) {
    Statement select = db.prepare(sqlFor(table).select);
    select.bind(1, id);
    if (!select.step()) return std::nullopt;
    return select.row(0, cellCount(table));
}

void writeRow(const Database& db, const RowChange& change) {
    const TableSql& sql = sqlFor(change.table);
    if (change.after) requireShape(change.table, *change.after);
    if (change.after && change.before) {
        Statement update = db.prepare(sql.update);
        update.bind(1, *change.after).bind(cellCount(change.table) + 1, change.id).run();
        requireOne(db, change);
    } else if (change.after) {
        db.prepare(sql.upsert).bind(1, change.id).bind(2, *change.after).run();
    } else if (change.before) {
        db.prepare(sql.erase).bind(1, change.id).run();
        requireOne(db, change);
    }
}

qint64 maxId(const Database& db, Table table) { return db.number(sqlFor(table).maxId); }

qint64 countRows(const Database& db, Table table) { return db.number(sqlFor(table).count); }

BulkInserter::BulkInserter(const Database& db, Table table)
    : m_statement(db.prepare(sqlFor(table).insert)), m_cells(columnsOf(table).size()) {}

void BulkInserter::insert(qint64 id, const Row& row) {
    if (row.size() != m_cells)
        throw Error(Error::Kind::Internal, QStringLiteral("A new row has a wrong number of cells."));
    m_statement.bind(1, id).bind(2, row).run();
}

qint64 deleteRange(const Database& db, Table table, qint64 firstId, qint64 count) {
    db.prepare(sqlFor(table).eraseRange).bind(1, firstId).bind(2, firstId + count - 1).run();
    return db.number("SELECT changes()");
}

void eachRow(const Database& db, Table table, const std::function<void(qint64, Row&&)>& take) {
    eachRowIn(db, table, INT64_MIN, 0, take);
}

void eachRowIn(const Database& db, Table table, qint64 firstId, qint64 count,
               const std::function<void(qint64, Row&&)>& take) {
    Statement select = db.prepare(sqlFor(table).selectRange);
    select.bind(1, firstId).bind(2, firstId == INT64_MIN ? INT64_MAX : firstId + count - 1);
    while (select.step()) take(select.integer(0), select.row(1, cellCount(table)));
}

} // namespace core::store
