#include "tests/fuzz/book_patch.h"

#include "tests/fuzz/scratch.h"
#include "tests/fuzz/target.h"

#include <algorithm>
#include <cstring>
#include <sqlite3.h>
#include <vector>

namespace tests::fuzz {

namespace {

constexpr int kMostPages = 2000;
constexpr int kMostLength = 4'000'000;
constexpr qint64 kPage = 4096;

/// A database in memory, in which everything may be altered.
class OpenedUp {
public:
    explicit OpenedUp(const QByteArray& bytes) {
        sqlite3_open(":memory:", &m_db);
        auto* copy = static_cast<unsigned char*>(sqlite3_malloc64(static_cast<sqlite3_uint64>(bytes.size())));
        std::memcpy(copy, bytes.constData(), static_cast<size_t>(bytes.size()));
        sqlite3_deserialize(m_db, "main", copy, bytes.size(), bytes.size(),
                            SQLITE_DESERIALIZE_FREEONCLOSE | SQLITE_DESERIALIZE_RESIZEABLE);
        sqlite3_limit(m_db, SQLITE_LIMIT_ATTACHED, 0);
        sqlite3_limit(m_db, SQLITE_LIMIT_LENGTH, kMostLength);
        sqlite3_progress_handler(
            m_db, 1000, [](void* left) { return --*static_cast<int*>(left) < 0 ? 1 : 0; }, &m_left);
        run("PRAGMA ignore_check_constraints = ON; PRAGMA writable_schema = ON;");
        run("PRAGMA max_page_count = " + QByteArray::number(kMostPages));
    }
    ~OpenedUp() { sqlite3_close_v2(m_db); }
    OpenedUp(const OpenedUp&) = delete;
    OpenedUp& operator=(const OpenedUp&) = delete;

    void run(const QByteArray& sql) {
        m_left = 2000;
        sqlite3_exec(m_db, sql.constData(), nullptr, nullptr, nullptr);
    }

    QByteArrayList column(const QByteArray& sql) {
        QByteArrayList out;
        sqlite3_stmt* rows = nullptr;
        sqlite3_prepare_v2(m_db, sql.constData(), -1, &rows, nullptr);
        m_left = 2000;
        while (sqlite3_step(rows) == SQLITE_ROW)
            out << QByteArray(reinterpret_cast<const char*>(sqlite3_column_text(rows, 0)));
        sqlite3_finalize(rows);
        return out;
    }

    QByteArrayList tables() {
        return column("SELECT name FROM sqlite_schema WHERE type = 'table' AND sql NOT LIKE 'CREATE VIRTUAL%' AND name "
                      "NOT LIKE 'sqlite!_%' ESCAPE '!' ORDER BY name");
    }

    QByteArray bytes() {
        sqlite3_int64 size = 0;
        unsigned char* const data = sqlite3_serialize(m_db, "main", &size, 0);
        QByteArray out(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size));
        sqlite3_free(data);
        return out;
    }

    sqlite3* db() const { return m_db; }

private:
    sqlite3* m_db = nullptr;
    int m_left = 2000;
};

QByteArray quoted(QByteArray name) { return '"' + name.replace('"', "\"\"") + '"'; }

qsizetype placeIn(const QByteArrayList& all, const QByteArray& number) {
    return all.isEmpty() ? -1 : static_cast<qsizetype>(number.toULongLong() % static_cast<quint64>(all.size()));
}

void bindValue(sqlite3_stmt* to, const QByteArray& value) {
    const QByteArray rest = value.mid(1);
    const QByteArray hex = QByteArray::fromHex(rest);
    switch (value.isEmpty() ? 'n' : value[0]) {
    case 'i':
        sqlite3_bind_int64(to, 1, rest.toLongLong());
        break;
    case 'r':
        sqlite3_bind_double(to, 1, rest.toDouble());
        break;
    case 't':
        sqlite3_bind_text(to, 1, rest.constData(), static_cast<int>(rest.size()), SQLITE_TRANSIENT);
        break;
    case 'x':
        sqlite3_bind_text(to, 1, hex.constData(), static_cast<int>(hex.size()), SQLITE_TRANSIENT);
        break;
    case 'b':
        sqlite3_bind_blob(to, 1, hex.constData(), static_cast<int>(hex.size()), SQLITE_TRANSIENT);
        break;
    default:
        sqlite3_bind_null(to, 1);
    }
}

/// The row of that place, by its rowid; nothing where the table has none.
QByteArray rowOf(OpenedUp& db, const QByteArray& table, const QByteArray& number) {
    const QByteArrayList count = db.column("SELECT count(*) FROM " + quoted(table));
    const quint64 rows = count.value(0).toULongLong();
    if (rows == 0) return {};
    return db
        .column("SELECT rowid FROM " + quoted(table) + " LIMIT 1 OFFSET " +
                QByteArray::number(number.toULongLong() % rows))
        .value(0);
}

void changeCell(OpenedUp& db, const QByteArrayList& words, const QByteArray& value) {
    const QByteArrayList tables = db.tables();
    if (tables.isEmpty()) return;
    const QByteArray table = tables[placeIn(tables, words.value(0))];
    const QByteArrayList columns = db.column("SELECT name FROM pragma_table_info(" + quoted(table) + ")");
    const QByteArray row = rowOf(db, table, words.value(1));
    if (columns.isEmpty() || row.isEmpty()) return;
    const QByteArray sql = "UPDATE " + quoted(table) + " SET " + quoted(columns[placeIn(columns, words.value(2))]) +
                           " = ?1 WHERE rowid = " + row;
    sqlite3_stmt* update = nullptr;
    if (sqlite3_prepare_v2(db.db(), sql.constData(), -1, &update, nullptr) == SQLITE_OK) bindValue(update, value);
    sqlite3_step(update);
    sqlite3_finalize(update);
}

void dropRow(OpenedUp& db, const QByteArrayList& words) {
    const QByteArrayList tables = db.tables();
    if (tables.isEmpty()) return;
    const QByteArray table = tables[placeIn(tables, words.value(0))];
    if (const QByteArray row = rowOf(db, table, words.value(1)); !row.isEmpty())
        db.run("DELETE FROM " + quoted(table) + " WHERE rowid = " + row);
}

void changeLine(OpenedUp& db, const QByteArrayList& words) {
    const QByteArray packed = qCompress(QByteArray::fromHex(words.value(2)));
    db.run("UPDATE history SET changes = x'" + packed.toHex() +
           "' WHERE seq = " + QByteArray::number(words.value(1).toInt()));
}

/// What is changed by statements; the rest is done to the bytes.
void changeRows(OpenedUp& db, const QByteArrayList& lines) {
    for (const QByteArray& line : lines) {
        const QByteArrayList words = line.split(' ');
        if (words[0] == "cell") changeCell(db, words.mid(1), words.mid(4).join(' '));
        if (words[0] == "hist") changeLine(db, words);
        if (words[0] == "gone") dropRow(db, words.mid(1));
        if (words[0] == "sql") db.run(line.mid(4));
    }
}

void overwrite(QByteArray& bytes, const QByteArrayList& words) {
    const QByteArray with = QByteArray::fromHex(words.value(2));
    if (with.isEmpty() || bytes.isEmpty()) return;
    const auto at = static_cast<qsizetype>(words.value(1).toULongLong() % static_cast<quint64>(bytes.size()));
    bytes.replace(at, std::min(with.size(), bytes.size() - at), with);
}

void movePage(QByteArray& bytes, const QByteArrayList& words) {
    const quint64 pages = static_cast<quint64>(bytes.size() / kPage);
    if (pages == 0) return;
    const auto a = static_cast<qsizetype>(words.value(1).toULongLong() % pages) * kPage;
    const auto b = static_cast<qsizetype>(words.value(2).toULongLong() % pages) * kPage;
    const QByteArray pageA = bytes.mid(a, kPage);
    const QByteArray pageB = bytes.mid(b, kPage);
    bytes.replace(b, kPage, pageA);
    if (words[0] == "swap") bytes.replace(a, kPage, pageB);
}

void changeBytes(QByteArray& bytes, const QByteArrayList& lines) {
    for (const QByteArray& line : lines) {
        const QByteArrayList words = line.split(' ');
        if (words[0] == "byte") overwrite(bytes, words);
        if (words[0] == "copy" || words[0] == "swap") movePage(bytes, words);
        if (words[0] == "cut") bytes.truncate(static_cast<qsizetype>(words.value(1).toULongLong() % 1'000'000));
    }
}

QByteArray bigEndian(quint32 n) {
    QByteArray out(4, '\0');
    for (int i = 0; i < 4; ++i) out[i] = static_cast<char>(n >> (24 - 8 * i));
    return out;
}

/// A journal without pages, and the name at its end. Source: SQLite, "Database File Format", section 3.
QByteArray journalNaming(const QByteArray& other, qsizetype bookBytes) {
    const QByteArray magic = QByteArray::fromHex("d9d505f920a163d7");
    QByteArray header = magic + bigEndian(0) + bigEndian(0) + bigEndian(static_cast<quint32>(bookBytes / kPage)) +
                        bigEndian(512) + bigEndian(kPage);
    header.append(512 - header.size(), '\0');
    quint32 sum = 0;
    for (const char c : other) sum += static_cast<quint32>(static_cast<signed char>(c));
    const auto lockPage = static_cast<quint32>(0x40000000 / kPage + 1);
    return header + bigEndian(lockPage) + other + bigEndian(static_cast<quint32>(other.size())) + bigEndian(sum) +
           magic;
}

void addBeside(PatchedBook& out, const QByteArrayList& lines, const QByteArray& other) {
    for (const QByteArray& line : lines) {
        if (line.startsWith("journal ")) out.journal = QByteArray::fromHex(line.mid(8));
        if (line.startsWith("wal ")) out.wal = QByteArray::fromHex(line.mid(4));
        if (line.startsWith("super ")) {
            const QByteArray named = line.mid(6).trimmed();
            out.journal = journalNaming(named == "other" ? other : named, out.book.size());
        }
    }
}

QByteArray numberText(std::mt19937& random) {
    static constexpr qint64 kOdd[] = {
        0, 1, -1, 2, 255, 4096, 2147483647, -2147483648LL, 9007199254740993, INT64_MAX, INT64_MIN};
    return QByteArray::number(random() % 3 == 0 ? kOdd[random() % std::size(kOdd)]
                                                : static_cast<qint64>(random() % 3000));
}

QByteArray hexText(std::mt19937& random) {
    QByteArray bytes;
    for (size_t n = 1 + random() % 8; n > 0; --n) bytes += static_cast<char>(random());
    return bytes.toHex();
}

QByteArray anyValue(std::mt19937& random) {
    static const QByteArrayList odd = {
        "n",         "t",           "t2026-02-30", "t0001-01-01", "t9999-12-31", "tA@2025-05-01",
        "t<b>x</b>", "t../../../x", "x00",         "xff",         "xe2808f",     "i-1",
        "r1e308",    "r-0.0",       "tafb",        "tunited",     "t{}",         "t[[[[[[[["};
    switch (random() % 4) {
    case 0:
        return odd[static_cast<qsizetype>(random() % static_cast<size_t>(odd.size()))];
    case 1:
        return "i" + numberText(random);
    case 2:
        return (random() % 2 ? "b" : "x") + hexText(random);
    default:
        return "t20" + QByteArray::number(10 + static_cast<int>(random() % 30)) + "-0" +
               QByteArray::number(1 + static_cast<int>(random() % 9)) + "-1" +
               QByteArray::number(static_cast<int>(random() % 10));
    }
}

QByteArray anyLine(std::mt19937& random) {
    const auto n = [&](unsigned below) { return QByteArray::number(static_cast<uint>(random() % below)); };
    switch (random() % 9) {
    case 0:
        return "gone " + n(70) + ' ' + n(500);
    case 1:
        return "byte " + n(600'000) + ' ' + hexText(random);
    case 2:
        return "byte " + n(100) + ' ' + hexText(random); // the file's header
    case 3:
        return (random() % 2 ? "copy " : "swap ") + n(130) + ' ' + n(130);
    case 4:
        return "base " + QByteArray::number(static_cast<int>(1 + random() % 7));
    default:
        return "cell " + n(70) + ' ' + n(500) + ' ' + n(25) + ' ' + anyValue(random);
    }
}

} // namespace

std::optional<PatchedBook> patchedBook(const QByteArray& input, const QByteArray& other) {
    PatchedBook out;
    if (input.startsWith("SQLite format 3")) {
        out.book = input;
        return out;
    }
    const QByteArrayList lines = input.split('\n');
    const int version = lines[0].startsWith("base ") ? static_cast<int>(lines[0].mid(5, 1).toUInt() % 7) : 0;
    {
        OpenedUp db(goldenBook(version == 0 ? 7 : version));
        changeRows(db, lines);
        out.book = db.bytes();
    }
    if (out.book.isEmpty()) return std::nullopt;
    changeBytes(out.book, lines);
    addBeside(out, lines, other);
    return out;
}

QByteArray changedPatch(const QByteArray& input, std::mt19937& random) {
    QByteArrayList lines = input.trimmed().split('\n');
    const auto at = static_cast<qsizetype>(random() % static_cast<size_t>(lines.size()));
    switch (random() % 5) {
    case 0:
        if (lines.size() > 1) lines.removeAt(at);
        break;
    case 1: { // the same of another row, column, page, ...
        QByteArrayList words = lines[at].split(' ');
        const auto word = static_cast<qsizetype>(random() % static_cast<size_t>(words.size()));
        if (word > 0) words[word] = word == 4 ? anyValue(random) : numberText(random);
        lines[at] = words.join(' ');
        break;
    }
    default:
        lines.insert(at + 1, anyLine(random));
    }
    return lines.join('\n') + '\n';
}

} // namespace tests::fuzz
