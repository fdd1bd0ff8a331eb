#pragma once

#include "core/model/row.h"
#include "core/store/database.h"

#include <functional>
#include <optional>

namespace core::store {

/// One row's cells as stored; nullopt when there is none of this id.
std::optional<Row> readRow(const Database& db, Table table, qint64 id);

/// Inserts, updates or deletes by id; a setting without `before` takes the place of one of the same name. Throws
/// Error(BadData) where the schema refuses the row (range, unique name, a row it points to), Error(Internal) where an
/// updated or deleted row is not there. Compare `before` yourself, with readRow.
void writeRow(const Database& db, const RowChange& change);

/// The greatest id in use; 0 in an empty table.
qint64 maxId(const Database& db, Table table);
qint64 countRows(const Database& db, Table table);

/// New rows one after the other through one prepared statement, inside the caller's transaction. Many visits are
/// written and read fastest by colony, then day.
class BulkInserter {
public:
    BulkInserter(const Database& db, Table table);
    void insert(qint64 id, const Row& row);

private:
    Statement m_statement;
    size_t m_cells;
};

/// Deletes the rows firstId .. firstId + count - 1. Returns how many there were.
qint64 deleteRange(const Database& db, Table table, qint64 firstId, qint64 count);

/// All rows in id order, one pass, nothing held; `take` may read other rows. Stops when `take` throws.
void eachRow(const Database& db, Table table, const std::function<void(qint64 id, Row&& cells)>& take);
/// The rows with firstId <= id < firstId + count, likewise.
void eachRowIn(const Database& db, Table table, qint64 firstId, qint64 count,
               const std::function<void(qint64 id, Row&& cells)>& take);

} // namespace core::store
