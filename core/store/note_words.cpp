#include "core/store/note_words.h"

#include "core/store/note_tables.h"

#include <algorithm>
#include <string>

namespace core::store {

namespace {

constexpr int kMostLookedAt = 20'000;
constexpr QChar kMarkFrom(2), kMarkTo(3);

qint64 keyOf(NoteOf of, qint64 id) { return kKinds * id + static_cast<qint64>(of); }

size_t cellOf(const Notes& n) {
    const auto columns = columnsOf(n.table);
    const auto at =
        std::ranges::find(columns, std::string_view(n.column), [](const char* name) { return std::string_view(name); });
    return static_cast<size_t>(at - columns.begin());
}

QString noteIn(const std::optional<Row>& row, size_t cell) {
    if (!row || cell >= row->size()) return {};
    const auto* text = std::get_if<QString>(&(*row)[cell]);
    return text ? *text : QString();
}

void rangeWords(const Database& db, Table table, qint64 firstId, qint64 count, const char* begin, const char* columns,
                const char* end) {
    const auto of = notesOf(table);
    if (!of) return;
    const Notes& n = notes(*of);
    const std::string key = "16 * id + " + std::to_string(static_cast<int>(*of));
    const std::string sql = std::string(begin) + " SELECT " + key + columns +
                            (*columns ? std::string(n.column) : std::string()) + " FROM " + tableName(table) +
                            " WHERE id BETWEEN ? AND ? AND " + n.column + " IS NOT NULL" + end;
    db.prepare(sql).bind(1, firstId).bind(2, firstId + count - 1).run();
}

/// The day and of what it is, of one record.
NoteFound placed(const Database& db, qint64 key) {
    NoteFound found;
    found.of = static_cast<NoteOf>(key % kKinds);
    found.id = key / kKinds;
    const Notes& n = notes(found.of);
    Statement read = db.prepare(std::string("SELECT ") + n.day + ", " + n.colony + ", " + n.yard + " FROM " +
                                tableName(n.table) + " WHERE id = ?");
    read.bind(1, found.id);
    if (!read.step()) return found;
    found.day = read.optionalDay(0);
    if (!read.isNull(1)) found.colony = ColonyId{read.integer(1)};
    if (!read.isNull(2)) found.yard = YardId{read.integer(2)};
    return found;
}

/// Takes the marks out of the text and says where they were.
void takeMarks(NoteFound& found, const QString& marked) {
    qsizetype from = -1;
    for (const QChar c : marked) {
        if (c == kMarkFrom) {
            from = found.text.size();
        } else if (c == kMarkTo) {
            if (from >= 0) found.marks.push_back({from, found.text.size() - from});
            from = -1;
        } else {
            found.text += c;
        }
    }
}

} // namespace

std::optional<NoteOf> notesOf(Table table) {
    for (size_t i = 0; i < kNotes.size(); ++i)
        if (kNotes[i].table == table) return static_cast<NoteOf>(i);
    return std::nullopt;
}

Table tableOfNotes(NoteOf of) { return notes(of).table; }

void wordsOfRow(const Database& db, const RowChange& change) {
    const auto of = notesOf(change.table);
    if (!of) return;
    const size_t cell = cellOf(notes(*of));
    const QString before = noteIn(change.before, cell);
    const QString after = noteIn(change.after, cell);
    if (before == after) return;
    const qint64 key = keyOf(*of, change.id);
    if (!before.isEmpty()) db.prepare("DELETE FROM note_words WHERE rowid = ?").bind(1, key).run();
    if (!after.isEmpty())
        db.prepare("INSERT INTO note_words (rowid, words) VALUES (?, ?)").bind(1, key).bind(2, after).run();
}

void wordsOfNewRange(const Database& db, Table table, qint64 firstId, qint64 count) {
    rangeWords(db, table, firstId, count, "INSERT INTO note_words (rowid, words)", ", ", " ORDER BY id");
}

void dropWordsOfRange(const Database& db, Table table, qint64 firstId, qint64 count) {
    rangeWords(db, table, firstId, count, "DELETE FROM note_words WHERE rowid IN (", "", ")");
}

NotesFound notesFound(const Database& db, const QString& typed, int most) {
    NotesFound all;
    const QString query = noteQuery(typed);
    if (query.isEmpty()) return all;
    std::vector<NoteFound> found;
    Statement keys = db.prepare("SELECT rowid FROM note_words WHERE note_words MATCH ? ORDER BY rowid DESC LIMIT ?");
    keys.bind(1, query).bind(2, qint64(kMostLookedAt + 1));
    while (keys.step()) found.push_back(placed(db, keys.integer(0)));
    all.more = found.size() > kMostLookedAt;
    if (all.more) found.pop_back();
    all.count = static_cast<int>(found.size());
    const auto dayNumber = [](const NoteFound& n) { return n.day ? n.day->number : INT_MIN; };
    std::ranges::stable_sort(found, std::greater(), dayNumber);
    if (found.size() > static_cast<size_t>(most)) found.resize(static_cast<size_t>(most));
    Statement around = db.prepare("SELECT snippet(note_words, 0, char(2), char(3), '…', 24) FROM note_words "
                                  "WHERE note_words MATCH ? AND rowid = ?");
    for (NoteFound& n : found) {
        around.bind(1, query).bind(2, keyOf(n.of, n.id));
        if (around.step()) takeMarks(n, around.text(0));
        around.reset();
    }
    all.notes = std::move(found);
    return all;
}

} // namespace core::store
