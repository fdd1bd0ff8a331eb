#include "core/store/history_parts.h"

namespace core::store {

void addHistoryPart(const Database& db, qint64 seq, int ofRange, int part, const QByteArray& rows) {
    db.prepare("INSERT INTO history_part (seq, of_range, part, rows) VALUES (?, ?, ?, ?)")
        .bind(1, seq)
        .bind(2, qint64(ofRange))
        .bind(3, qint64(part))
        .bind(4, rows)
        .run();
}

std::optional<QByteArray> historyPart(const Database& db, qint64 seq, int ofRange, int part) {
    Statement read = db.prepare("SELECT rows FROM history_part WHERE seq = ? AND of_range = ? AND part = ?");
    read.bind(1, seq).bind(2, qint64(ofRange)).bind(3, qint64(part));
    return read.step() ? std::optional(read.blob(0)) : std::nullopt;
}

} // namespace core::store
