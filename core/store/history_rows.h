#pragma once

#include "core/store/database.h"

#include <QByteArray>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

namespace core::store {

enum class HistoryKind { Do, Undo, Redo };

/// One stored line of the history. What the blobs hold is the edits' affair.
struct HistoryRow {
    qint64 seq = 0; ///< 1, 2, 3, … given when it is added
    QString at;     ///< UTC, ISO 8601
    QString by;
    QString sentence;
    QString reason; ///< of a correction
    HistoryKind kind = HistoryKind::Do;
    std::optional<qint64> ofSeq; ///< of an undo or redo: the `do` line that it takes back or does again
    QByteArray changes;          ///< left empty by listHistory
    QByteArray attachments;      ///< likewise; may be a null array
};

/// Adds the line under the next number and returns it.
qint64 addHistory(const Database& db, const HistoryRow& line);
/// Newest first, at most `most`, without blobs.
std::vector<HistoryRow> listHistory(const Database& db, int most);
/// Oldest first, without blobs.
void eachHistory(const Database& db, const std::function<void(const HistoryRow&)>& take);
std::optional<HistoryRow> readHistory(const Database& db, qint64 seq);
/// Newest first from below `before` on (nullopt: from the newest), without blobs, until `take` says false.
void eachHistoryBefore(const Database& db, std::optional<qint64> before,
                       const std::function<bool(const HistoryRow&)>& take);
/// Oldest first from above `after` on, likewise.
void eachHistoryAfter(const Database& db, qint64 after, const std::function<bool(const HistoryRow&)>& take);
/// The newest line of a step: the `do` line, or the latest that took it back or did it again. Without blobs.
std::optional<HistoryRow> latestOfStep(const Database& db, qint64 doneAs);
/// The changes of one line; a null array when there is none.
QByteArray historyChanges(const Database& db, qint64 seq);

} // namespace core::store
