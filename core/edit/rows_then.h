#pragma once

#include "core/edit/history_codec.h"
#include "core/store/database.h"

#include <optional>

namespace core::edit {

/// Rows as a line of the history knew them: its own first (as it left them, else as it found them), then the book's,
/// and of those that are gone what the next later line that wrote them found.
class RowsThen {
public:
    /// `standing`: what the line did stands in the book, and so does all that its rows point to. Else another row may
    /// have taken an id since, and later lines are asked first.
    RowsThen(const store::Database& db, qint64 seq, const HistoryRecord& record, bool standing = true)
        : m_db(db), m_seq(seq), m_record(record), m_standing(standing) {}

    std::optional<Row> row(Table table, qint64 id) const;

private:
    std::optional<Row> foundLater(Table table, qint64 id, int most) const;

    const store::Database& m_db;
    qint64 m_seq;
    const HistoryRecord& m_record;
    bool m_standing;
};

} // namespace core::edit
