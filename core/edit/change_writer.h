#pragma once

#include "core/base/progress.h"
#include "core/edit/change_set.h"
#include "core/edit/history_codec.h"
#include "core/store/database.h"
#include "core/store/history_rows.h"

namespace core::edit {

/// Rows in one packed part of a deleted range, but for its last.
constexpr qint64 kRowsAPart = 10'000;

/// Writes the rows of one change and its line of the history within the caller's transaction; returns the line's
/// number. Each `before` must equal the stored row, else Error(BadData): changed meanwhile. Ranges are streamed: at
/// most one part of their rows is in memory.
/// `line`: when, who, kind, of which line, reason; its sentence and changes come from the change. Of many rows
/// `progress` is told; throws Stopped.
qint64 writeChange(const store::Database& db, const ChangeSet& change, store::HistoryRow line,
                   const Progress& progress = {});

/// What takes line `seq` back: rows deleted as a range come from the packed parts of that line.
ChangeSet reversal(const store::Database& db, qint64 seq);

/// The row of this id as line `seq` packed it when it deleted it as part of a range; nullopt: it did not.
std::optional<Row> deletedRow(const store::Database& db, qint64 seq, const HistoryRecord& record, Table table,
                              qint64 id);

/// The rows of a table that line `seq` packed when it deleted them as ranges, in id order within each.
void eachDeletedRow(const store::Database& db, qint64 seq, const HistoryRecord& record, Table table,
                    const std::function<void(qint64 id, Row&& row)>& take);

/// The attachments of a line; none: empty.
std::vector<Attachment> attachmentsOf(const store::Database& db, qint64 seq);

} // namespace core::edit
