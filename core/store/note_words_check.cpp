#include "core/store/note_tables.h"
#include "core/store/note_words.h"

#include <QScopeGuard>

#include <string>

namespace core::store {

namespace {

constexpr int kMostSaid = 21;

/// The index against the words that it was made of; FTS5's own look, which writes nothing.
bool indexSound(const Database& db) {
    // A book open for reading alone takes no command of a table. Where its file cannot be written at all, its words
    // are compared, but not the index.
    const bool readOnly = db.readOnly();
    if (readOnly) db.exec("PRAGMA query_only = OFF");
    const auto again = qScopeGuard([&] {
        if (readOnly) db.exec("PRAGMA query_only = ON");
    });
    try {
        db.exec("INSERT INTO note_words (note_words) VALUES ('integrity-check')");
    } catch (const Error& e) {
        return !e.detail().startsWith(QLatin1String("sqlite 267:")) &&
               !e.detail().startsWith(QLatin1String("sqlite 11:"));
    }
    return true;
}

std::string allNotes() {
    std::string sql;
    for (size_t i = 0; i < kNotes.size(); ++i)
        sql += std::string(i ? " UNION ALL " : "") + "SELECT 16 * id + " + std::to_string(i) + " AS key, " +
               kNotes[i].column + " AS note FROM " + tableName(kNotes[i].table) + " WHERE " + kNotes[i].column +
               " IS NOT NULL";
    return sql;
}

/// The note that words are of.
std::string noteOfWords() {
    std::string sql = "CASE w.id % 16";
    for (size_t i = 0; i < kNotes.size(); ++i)
        sql += " WHEN " + std::to_string(i) + " THEN (SELECT " + kNotes[i].column + " FROM " +
               tableName(kNotes[i].table) + " WHERE id = w.id / 16)";
    return sql + " END";
}

QString recordOf(qint64 key) {
    const qint64 of = key % kKinds;
    const char* table = of >= 0 && of < kNoteOfCount ? tableName(kNotes[static_cast<size_t>(of)].table) : "nothing";
    return QStringLiteral("%1 %2").arg(QLatin1String(table)).arg(key / kKinds);
}

} // namespace

std::vector<QString> wrongWords(const Database& db) {
    std::vector<QString> wrong;
    const auto look = [&](const char* what, const std::string& sql) {
        Statement row = db.prepare(sql);
        for (int i = 0; i < kMostSaid && row.step(); ++i)
            wrong.push_back(QStringLiteral("%1: %2").arg(QLatin1String(what), recordOf(row.integer(0))));
    };
    look("The search over all notes does not have a note as it stands",
         "SELECT n.key FROM (" + allNotes() +
             ") n LEFT JOIN note_words_content w ON w.id = n.key "
             "WHERE w.c0 IS NOT n.note");
    look("The search over all notes has a note that is not there",
         "SELECT w.id FROM note_words_content w WHERE " + noteOfWords() + " IS NULL");
    if (!indexSound(db))
        wrong.push_back(QStringLiteral("The search over all notes is damaged and may miss some; the notes themselves "
                                       "are whole: its index"));
    return wrong;
}

} // namespace core::store
