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

/// Rows firstId … firstId + count − 1 of one table, all of them there: deleted as a range, packed into the history.
struct BulkDelete {
    Table table = Table::Visit;
    qint64 firstId = 1;
    qint64 count = 0;
    friend bool operator==(const BulkDelete&, const BulkDelete&) = default;
};

/// A text kept with a history line for audit (an import's CSV), compressed in the book.
struct Attachment {
    QString name;
    QByteArray text;
};

class EditContext;

/// What one edit does: one transaction, one history line, one undo step.
struct ChangeSet {
    QString text; ///< past tense, names the thing: the undo menu's text and the history line
    std::vector<RowChange> rows;
    std::vector<BulkInsert> bulk; ///< written before `rows`
    std::vector<BulkDelete> gone; ///< deleted after `rows`; what the undo of `bulk` does
    std::vector<Attachment> attachments;
    /// Where set: what stands against the edit (empty: nothing). It is then only written as a fact, with a reason and a
    /// name. Asked by the Session, with the context of the edit; never of an undo.
    std::function<QString(const EditContext& c)> against = {};
    bool empty() const { return rows.empty() && bulk.empty() && gone.empty(); }
};

/// What takes the row changes back: in reverse order, before and after swapped. Bulk is not of it (see history.h).
std::vector<RowChange> inverse(const std::vector<RowChange>& rows);

} // namespace core::edit
