#include "core/exchange/export_history.h"

#include "core/edit/compare_books.h"
#include "core/edit/history_detail.h"
#include "core/store/database.h"
#include "core/store/watched.h"

#include <limits>

namespace core::exchange {

namespace {

using edit::ChangeWords;
using edit::HistoryLine;

constexpr const char* kKinds[] = {"do", "undo", "redo"};
constexpr const char* kDid[] = {"added", "changed", "taken-away"};

QString wordAt(const char* const* words, auto value) { return QString::fromLatin1(words[static_cast<size_t>(value)]); }

QStringList lineCells(const HistoryLine& line) {
    return {QString::number(line.seq),
            line.at.toUTC().toString(Qt::ISODateWithMs),
            line.by,
            wordAt(kKinds, line.kind),
            line.of ? QString::number(*line.of) : QString(),
            line.text,
            line.reason};
}

void writeChange(const QString& seq, const ChangeWords& change, CsvWriter& out) {
    const QStringList what{seq, change.what, wordAt(kDid, change.how)};
    if (change.fields.empty()) out.row(what + QStringList{QString(), QString(), QString()});
    for (const edit::FieldWords& field : change.fields)
        out.row(what + QStringList{field.field, field.from.value_or(QString()), field.to.value_or(QString())});
}

} // namespace

void exportHistory(const edit::Session& session, CsvWriter& lines, CsvWriter& fields, const Progress& progress) {
    const auto db = store::Database::open(session.path(), store::Access::ReadOnly);
    const store::ReadTransaction steady(*db);
    const store::Watched watched(db->handle(), progress);
    const qint64 last = edit::lastLine(*db);
    for (qint64 seq = 1; seq <= last; ++seq) {
        const auto detail = edit::historyDetail(*db, seq, std::numeric_limits<int>::max(), progress);
        if (!detail) continue;
        lines.row(lineCells(detail->line));
        for (const ChangeWords& change : detail->changes) writeChange(QString::number(seq), change, fields);
    }
}

} // namespace core::exchange
