#include "core/store/row_links.h"

#include "core/model/references.h"
#include "core/store/row_store.h"

#include <algorithm>
#include <string>

namespace core::store {

namespace {

std::string columnName(Table table, size_t column) { return columnsOf(table)[column]; }

/// The first of the rows that the statement lists that is not in `with`.
std::optional<RowKey> firstOutside(Statement&& rows, Table table, const RowGroup& with) {
    while (rows.step())
        if (const RowKey key{table, rows.integer(0)}; !with.has(key)) return key;
    return std::nullopt;
}

/// " AND id NOT BETWEEN …" for the ranges of this table: they may be millions of rows.
std::string outsideRanges(Table table, const RowGroup& with) {
    std::string sql;
    for (const IdRange& range : with.ranges)
        if (range.table == table)
            sql += " AND id NOT BETWEEN " + std::to_string(range.firstId) + " AND " +
                   std::to_string(range.firstId + range.count - 1);
    return sql;
}

} // namespace

bool RowGroup::has(const RowKey& key) const {
    return rows.contains(key) ||
           std::any_of(ranges.begin(), ranges.end(), [&](const IdRange& range) { return range.has(key); });
}

std::optional<RowKey> rowPointingTo(const Database& db, const IdRange& to, const RowGroup& with) {
    for (const Reference& r : references()) {
        if (r.to != to.table) continue;
        const std::string column = columnName(r.from, r.column);
        Statement rows = db.prepare(std::string("SELECT id FROM ") + tableName(r.from) + " WHERE " + column +
                                    " IS NOT NULL AND " + column + " BETWEEN ? AND ?" + outsideRanges(r.from, with));
        rows.bind(1, to.firstId).bind(2, to.firstId + to.count - 1);
        if (const auto found = firstOutside(std::move(rows), r.from, with)) return found;
    }
    return std::nullopt;
}

std::optional<RowKey> missingTarget(const Database& db, Table table, const Row& row, const RowGroup& with) {
    for (const Reference& r : references()) {
        if (r.from != table) continue;
        const auto* id = std::get_if<qint64>(&row[r.column]);
        if (!id || with.has({r.to, *id}) || readRow(db, r.to, *id)) continue;
        return RowKey{r.to, *id};
    }
    return std::nullopt;
}

std::optional<RowKey> rowInPlaceOf(const Database& db, const RowKey& key, const Row& row, const RowGroup& with) {
    for (const UniqueKey& unique : uniqueKeys()) {
        if (unique.table != key.first) continue;
        const bool some = unique.onlyColumn >= 0;
        if (some && row[static_cast<size_t>(unique.onlyColumn)] != unique.onlyValue) continue;
        std::string sql = std::string("SELECT id FROM ") + tableName(key.first) + " WHERE id <> ?";
        for (const size_t column : unique.columns) sql += " AND " + columnName(key.first, column) + " = ?";
        if (some) sql += " AND " + columnName(key.first, static_cast<size_t>(unique.onlyColumn)) + " IS ?";
        Statement rows = db.prepare(sql);
        int at = 1;
        rows.bind(at++, key.second);
        for (const size_t column : unique.columns) rows.bind(at++, row[column]);
        if (some) rows.bind(at, unique.onlyValue);
        if (const auto found = firstOutside(std::move(rows), key.first, with)) return found;
    }
    return std::nullopt;
}

} // namespace core::store
