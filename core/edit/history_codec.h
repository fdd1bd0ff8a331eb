#pragma once

#include "core/edit/change_set.h"

#include <QByteArray>

#include <vector>

namespace core::edit {

/// A range of ids in one table, as the history keeps it.
struct RowRange {
    Table table = Table::Visit;
    qint64 firstId = 1;
    qint64 count = 0;
    friend bool operator==(const RowRange&, const RowRange&) = default;
};

/// What one history line did, less the rows of its ranges: first `inserted`, then `rows`, then `deleted`.
struct HistoryRecord {
    std::vector<RowRange> inserted;
    std::vector<RowChange> rows;
    std::vector<RowRange> deleted;
    friend bool operator==(const HistoryRecord&, const HistoryRecord&) = default;
};

/// Binary, versioned, compressed. Tables and columns are kept by name, so that a line written before a column was
/// added can still be read: cells of columns it does not know are NULL.
QByteArray encode(const HistoryRecord& record);
/// Throws Error(Book) when the bytes are no record, or one of a newer version.
HistoryRecord decode(const QByteArray& bytes);
/// The same with tables and ids of its rows alone, for a look through many lines.
HistoryRecord decodeKeys(const QByteArray& bytes);

/// The cells of consecutive rows of one table, for the packed parts of a line. Same form and errors.
QByteArray encodeRows(Table table, const std::vector<Row>& rows);
std::vector<Row> decodeRows(Table table, const QByteArray& bytes);

} // namespace core::edit
