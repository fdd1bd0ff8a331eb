#include "core/store/history_rows.h"

#include "core/base/damaged.h"

#include <array>

namespace core::store {

namespace {

constexpr std::array<const char*, 3> kKindWords = {"do", "undo", "redo"};

constexpr const char* kNewest =
    "SELECT seq, at, by_whom, sentence, reason, kind, of_seq FROM history ORDER BY seq DESC LIMIT ?";
constexpr const char* kOldest = "SELECT seq, at, by_whom, sentence, reason, kind, of_seq FROM history ORDER BY seq";
constexpr const char* kBefore =
    "SELECT seq, at, by_whom, sentence, reason, kind, of_seq FROM history WHERE seq < ? ORDER BY seq DESC";
constexpr const char* kAfter =
    "SELECT seq, at, by_whom, sentence, reason, kind, of_seq FROM history WHERE seq > ? ORDER BY seq";
constexpr const char* kLine = "SELECT seq, at, by_whom, sentence, reason, kind, of_seq FROM history WHERE seq = ?";
constexpr const char* kOne =
    "SELECT seq, at, by_whom, sentence, reason, kind, of_seq, changes, attachments FROM history WHERE seq = ?";
constexpr const char* kAdd = "INSERT INTO history (seq, at, by_whom, sentence, reason, kind, of_seq, changes, "
                             "attachments) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)";

HistoryKind kindNamed(const QString& word) {
    for (size_t i = 0; i < kKindWords.size(); ++i)
        if (word == QLatin1String(kKindWords[i])) return static_cast<HistoryKind>(i);
    throw Damaged(QStringLiteral("The book is damaged: a line of its history cannot be read."), word);
}

HistoryRow lineAt(const Statement& s) {
    HistoryRow line;
    line.seq = s.integer(0);
    line.at = s.text(1);
    line.by = s.text(2);
    line.sentence = s.text(3);
    line.reason = s.text(4);
    line.kind = kindNamed(s.text(5));
    if (!s.isNull(6)) line.ofSeq = s.integer(6);
    return line;
}

} // namespace

qint64 addHistory(const Database& db, const HistoryRow& line) {
    const qint64 seq = db.number("SELECT max(seq) FROM history") + 1;
    Statement add = db.prepare(kAdd);
    add.bind(1, seq).bind(2, line.at).bind(3, line.by).bind(4, line.sentence).bind(5, line.reason);
    add.bind(6, QString::fromLatin1(kKindWords[static_cast<size_t>(line.kind)]));
    if (line.ofSeq) add.bind(7, *line.ofSeq);
    add.bind(8, line.changes).bind(9, line.attachments).run();
    return seq;
}

std::vector<HistoryRow> listHistory(const Database& db, int most) {
    std::vector<HistoryRow> lines;
    Statement select = db.prepare(kNewest);
    select.bind(1, qint64(most));
    while (select.step()) lines.push_back(lineAt(select));
    return lines;
}

void eachHistory(const Database& db, const std::function<void(const HistoryRow&)>& take) {
    Statement select = db.prepare(kOldest);
    while (select.step()) take(lineAt(select));
}

std::optional<HistoryRow> readHistory(const Database& db, qint64 seq) {
    Statement select = db.prepare(kOne);
    select.bind(1, seq);
    if (!select.step()) return std::nullopt;
    HistoryRow line = lineAt(select);
    line.changes = select.blob(7);
    line.attachments = select.blob(8);
    return line;
}

void eachHistoryBefore(const Database& db, std::optional<qint64> before,
                       const std::function<bool(const HistoryRow&)>& take) {
    Statement select = db.prepare(kBefore);
    select.bind(1, before.value_or(INT64_MAX));
    while (select.step())
        if (!take(lineAt(select))) return;
}

void eachHistoryAfter(const Database& db, qint64 after, const std::function<bool(const HistoryRow&)>& take) {
    Statement select = db.prepare(kAfter);
    select.bind(1, after);
    while (select.step())
        if (!take(lineAt(select))) return;
}

std::optional<HistoryRow> latestOfStep(const Database& db, qint64 doneAs) {
    // Two indexed reads: the line itself, and the newest that names it.
    Statement later = db.prepare("SELECT max(seq) FROM history WHERE of_seq = ?");
    later.bind(1, doneAs);
    const bool found = later.step() && !later.isNull(0);
    Statement select = db.prepare(kLine);
    select.bind(1, found ? later.integer(0) : doneAs);
    return select.step() ? std::optional(lineAt(select)) : std::nullopt;
}

QByteArray historyChanges(const Database& db, qint64 seq) {
    Statement select = db.prepare("SELECT changes FROM history WHERE seq = ?");
    select.bind(1, seq);
    return select.step() ? select.blob(0) : QByteArray();
}

} // namespace core::store
