#pragma once

#include "core/model/row.h"

#include <QByteArray>
#include <QString>

#include <functional>
#include <vector>

namespace core::edit {

/// Many new rows of one table with ids firstId, firstId + 1, …; kept as a range in the history, not row by row.
struct BulkInsert {
    Table table = Table::Visit;
    qint64 firstId = 1;
    qint64 count = 0;
    std::function<Row(qint64 position)> row; ///< cells of row `position`, 0..count − 1; called once each, in order
};

/// A text kept with a history line for audit (an import's CSV), compressed in the book.
struct Attachment {
    QString name;
    QByteArray text;
};

/// What one edit does: one transaction, one history line, one undo step.
struct ChangeSet {
    QString text; ///< past tense, names the thing: the undo menu's text and the history line
    std::vector<RowChange> rows;
    std::vector<BulkInsert> bulk; ///< written before `rows`
    std::vector<Attachment> attachments;
    bool empty() const { return rows.empty() && bulk.empty(); }
};

} // namespace core::edit
