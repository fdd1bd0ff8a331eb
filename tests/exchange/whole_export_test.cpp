#include "core/edit/edits.h"
#include "core/exchange/export.h"
#include "core/exchange/file_guide.h"
#include "core/store/migration.h"
#include "tests/exchange/workbench.h"
#include "tests/support/quick_place.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QRegularExpression>

#include <map>
#include <set>
#include <sqlite3.h>

// Nobody is locked in: whatever a book holds comes out in files that say what they mean.

namespace tests::exchange {
namespace {

using core::edit::Session;
using core::exchange::ColumnGuide;
using core::exchange::columnGuides;

/// Columns of the book that come out in no file, each with its reason.
const std::map<QString, QString> kNotInAnyFile = {
    {f("*.id"), f("rows are named by what they are about, not by a number of the program")},
    {f("*.key"), f("the name or label again, folded for searching")},
    {f("book.uuid"), f("tells copies of one book apart; says nothing of bees")},
    {f("placement.first"), f("told by the file: a first stand is in colonies.csv, the others in placements.csv")},
    {f("placement.until"), f("the day of the next placement, or of the colony's end: check() refuses any other")},
    {f("history.attachments"), f("bytes of the files that an import read, of which every row is in the book")},
    {f("history_part.*"), f("rows of an import that was undone, packed for doing it again; they are in no record")},
    {f("medicine_line.*"), f("which lines of the history are about treatments: made from the history")},
    {f("note_words*"), f("the words of notes again, for searching")},
};
/// What HistoryAndItsFieldsComeOut looks at instead of altering it: a history is made by edits alone.
const QStringList kHistory = {f("history.seq"), f("history.kind"), f("history.of_seq"), f("history.changes")};

bool excepted(const QString& table, const QString& column) {
    return kNotInAnyFile.contains(table + u'.' + column) || kNotInAnyFile.contains(f("*.") + column) ||
           kNotInAnyFile.contains(table + f(".*")) || table.startsWith(f("note_words")) ||
           table.startsWith(f("sqlite_"));
}

/// A plain connection: a test may alter what an edit could not.
class RawBook {
public:
    explicit RawBook(const QString& path) {
        EXPECT_EQ(sqlite3_open(QFile::encodeName(path).constData(), &m_db), SQLITE_OK);
        EXPECT_TRUE(run(f("PRAGMA foreign_keys = ON")));
        EXPECT_TRUE(run(f("PRAGMA synchronous = OFF")));
    }
    ~RawBook() { sqlite3_close(m_db); }
    RawBook(const RawBook&) = delete;
    RawBook& operator=(const RawBook&) = delete;

    bool run(const QString& sql) const {
        return sqlite3_exec(m_db, sql.toUtf8().constData(), nullptr, nullptr, nullptr) == SQLITE_OK;
    }
    bool changes(const QString& sql) const { return run(sql) && sqlite3_changes(m_db) > 0; }
    QStringList column(const QString& sql) const {
        sqlite3_stmt* ask = nullptr;
        QStringList cells;
        EXPECT_EQ(sqlite3_prepare_v2(m_db, sql.toUtf8().constData(), -1, &ask, nullptr), SQLITE_OK)
            << sql.toStdString();
        while (sqlite3_step(ask) == SQLITE_ROW)
            cells << QString::fromUtf8(reinterpret_cast<const char*>(sqlite3_column_text(ask, 0)));
        sqlite3_finalize(ask);
        return cells;
    }

private:
    sqlite3* m_db = nullptr;
};

/// The golden book of this version, with a row in every table and every file.
struct WholeExport : ::testing::Test {
    QTemporaryDir dir{tests::quickPlace(f("yardwright-XXXXXX"))};
    StillClock clock;
    QString full = dir.filePath(f("full.yardwright"));

    void SetUp() override {
        const int version = core::store::bookMigrations().back().version;
        ASSERT_TRUE(QFile::copy(f(YW_SOURCE_DIR "/tests/golden/version-%1.yardwright").arg(version), full));
        ASSERT_TRUE(QFile::setPermissions(full, QFile::ReadOwner | QFile::WriteOwner));
        const RawBook raw(full);
        for (const char* sql : {
                 "UPDATE colony SET note = 'Quiet.' WHERE id IN (1, 2)",
                 "INSERT INTO yard (id, name, key, closed) VALUES (90, 'Old yard', 'old yard', 1)",
                 "INSERT INTO stand (id, yard, name, key, x_mm, y_mm, removed) VALUES (900, 90, 's', 's', 1000, 2000, "
                 "1)",
                 "INSERT INTO kit (id, yard, part, state, colony, count) VALUES (1, 90, 'boxes', 'usable', 1, 3)",
                 "INSERT INTO setting (id, name, value) VALUES (1, 'gain.min', '60')",
                 "INSERT INTO treatment (id, colony, day, product, substance, antibiotic) SELECT 900, colony, "
                 "'2026-10-02', 'Other', 'oxalic acid', 0 FROM treatment WHERE colony IS NOT NULL LIMIT 1",
                 "INSERT INTO treatment (id, yard, day, product, substance, antibiotic) VALUES (901, 1, '2026-10-02', "
                 "'Other', 'oxalic acid', 0)",
                 "INSERT INTO result (id, yard, day, disease, verdict, method, by_whom, paper) VALUES (901, 1, "
                 "'2026-10-02', 'afb', 'release', 'inspector', 'Office', 'P 1')",
                 "INSERT INTO feeding (id, colony, day, what, amount_dag) VALUES (901, 1, '2026-10-02', 'fondant', "
                 "250)",
                 "INSERT INTO queen (id, colony, since, until, fate) VALUES (901, 2, '2026-05-02', '2026-05-03', "
                 "'dead')",
                 "INSERT INTO merge_day (id, yard, day, variant, revision) SELECT 900, yard, day, 3, 1 FROM merge_day",
             })
            ASSERT_TRUE(raw.run(f(sql))) << sql;
    }
    Texts exported(const QString& book, const char* to = "out") const {
        const QString out = dir.filePath(f(to));
        QDir(out).removeRecursively();
        core::exchange::exportBook(*Session::open(book, clock, Session::Access::ReadOnly), out);
        return textsOf(out);
    }
};

/// Cells of a CSV file as we write it, by column.
std::map<QString, QStringList> columnsOf(const QByteArray& text) {
    std::vector<QStringList> rows{{}};
    QString cell;
    bool quoted = false;
    const QString all = QString::fromUtf8(text);
    for (qsizetype i = 0; i < all.size(); ++i) {
        const QChar c = all[i];
        if (c == u'"') {
            if (quoted && i + 1 < all.size() && all[i + 1] == u'"')
                cell += all[++i];
            else
                quoted = !quoted;
        } else if (!quoted && (c == u',' || c == u'\n')) {
            rows.back() << cell;
            cell.clear();
            if (c == u'\n') rows.push_back({});
        } else {
            cell += c;
        }
    }
    rows.pop_back();
    std::map<QString, QStringList> columns;
    for (qsizetype at = 0; at < rows.front().size(); ++at)
        for (size_t row = 1; row < rows.size(); ++row) columns[rows.front()[at]] << rows[row].value(at);
    return columns;
}

QStringList headerOf(const QByteArray& text) { return QString::fromUtf8(text.left(text.indexOf('\n'))).split(u','); }

TEST_F(WholeExport, EveryFileHasTheColumnsThatTheGuideNamesAndNoOther) {
    std::map<QString, QStringList> told;
    for (const ColumnGuide& g : columnGuides()) {
        if (g.column.isEmpty())
            told[g.file];
        else
            told[g.file] << g.column;
    }
    Texts files = exported(full);
    const QByteArray written = files.extract(f("columns.csv")).mapped();
    for (const auto& [file, text] : files) EXPECT_EQ(headerOf(text), told[file]) << file.toStdString();
    for (const auto& [file, columns] : told)
        EXPECT_TRUE(files.contains(file)) << file.toStdString() << " is not written";
    const auto guide = columnsOf(written);
    EXPECT_EQ(headerOf(written), core::exchange::guideHeader());
    EXPECT_TRUE(guide.at(f("column")).contains(f("value of gain.min"))) << "settings with their units";
    EXPECT_TRUE(guide.at(f("unit")).contains(f("days")));
}

TEST_F(WholeExport, TheGuideNamesEachColumnOfTheBookOrItIsAnException) {
    std::set<QString> told;
    for (const ColumnGuide& g : columnGuides())
        for (const QString& from : g.from) told.insert(from);
    told.erase(f("import"));
    const RawBook raw(full);
    std::set<QString> real;
    for (const QString& table : raw.column(f("SELECT name FROM sqlite_schema WHERE type = 'table'")))
        for (const QString& column : raw.column(f("SELECT name FROM pragma_table_info('%1')").arg(table))) {
            const QString name = table + u'.' + column;
            real.insert(name);
            EXPECT_NE(told.contains(name), excepted(table, column)) << name.toStdString();
        }
    for (const QString& name : told) EXPECT_TRUE(real.contains(name)) << name.toStdString() << " is in no book";
}

TEST_F(WholeExport, AllowedWordsAreThoseOfTheBook) {
    const RawBook raw(full);
    int compared = 0;
    for (const ColumnGuide& g : columnGuides()) {
        if (g.from.size() != 1 || g.column.isEmpty()) continue;
        const QString column = g.from.front().section(u'.', 1);
        const QString sql =
            raw.column(f("SELECT sql FROM sqlite_schema WHERE name = '%1'").arg(g.from.front().section(u'.', 0, 0)))
                .value(0);
        const auto found = QRegularExpression(f("\\b%1 TEXT[^,]*CHECK \\(%1 IN \\(([^)]*)\\)").arg(column)).match(sql);
        if (!found.hasMatch()) continue;
        QString words = found.captured(1).simplified();
        words.remove(u'\'').remove(u',');
        EXPECT_EQ(g.allowed, words) << g.file.toStdString() << ' ' << g.column.toStdString();
        ++compared;
    }
    EXPECT_GT(compared, 20);
}

/// Values that a column may take, the likeliest first.
QStringList candidates(const RawBook& raw, const QString& table, const QString& column) {
    QStringList values;
    const QString refers =
        raw.column(f("SELECT \"table\" FROM pragma_foreign_key_list('%1') WHERE \"from\" = '%2'").arg(table, column))
            .value(0);
    if (!refers.isEmpty()) return raw.column(f("SELECT id FROM %1 ORDER BY id").arg(refers));
    const QString type =
        raw.column(f("SELECT type FROM pragma_table_info('%1') WHERE name = '%2'").arg(table, column)).value(0);
    if (type != f("TEXT")) return {f("7"), f("3"), f("2"), f("1"), f("0"), f("15"), f("2020"), f("5000")};
    const QString sql = raw.column(f("SELECT sql FROM sqlite_schema WHERE name = '%1'").arg(table)).value(0);
    const auto words = QRegularExpression(f("%1 IN \\(([^)]*)\\)").arg(column)).match(sql);
    if (words.hasMatch()) values = words.captured(1).simplified().split(f(", "));
    if (table == f("setting")) return {column == f("name") ? f("'gain.min_queen'") : f("'61'")};
    if (column == f("points"))
        return {f("'1000,2000 3000,4000'"), f("'0,0 1000,0 1000,1000 0,1000'"), f("'5000,6000'")};
    if (column == f("ask") || column == f("form")) return {f("'{\"x\":1}'")};
    if (column == f("at")) return {f("'2020-01-02T03:04:05.006Z'")};
    return values << f("'zq 17'") << f("'2026-11-23'") << f("'2027-01-01'") << f("'2025-01-01'") << f("'2024-01-01'");
}

struct Pending {
    QString table;
    QString column;
    QStringList values;
    QString name() const { return table + u'.' + column; }
};

/// Alters one row of the column, to the next value that the schema takes; "" where none is left.
QString altered(const RawBook& raw, Pending& p) {
    const QString which = p.table == f("placement") ? f(" WHERE first = 0") : QString(); // the others are the colony's
    const QStringList ids = raw.column(f("SELECT rowid FROM %1%2 LIMIT 60").arg(p.table, which));
    if (p.name() == f("merge_strip.how") && !p.values.isEmpty()) { // the schema ties it to whose box is on top
        p.values.clear();
        return raw.changes(f("UPDATE merge_strip SET how = 'shaken-out', upper = NULL WHERE how = 'united'"))
                   ? f("both")
                   : QString();
    }
    if (p.name() == f("merge_strip.host")) raw.run(f("UPDATE merge_strip SET upper = moved"));
    if (p.name() == f("merge_strip.moved")) raw.run(f("UPDATE merge_strip SET upper = host"));
    while (!p.values.isEmpty()) {
        const QString value = p.values.takeFirst();
        for (const QString& id : ids)
            if (raw.changes(
                    f("UPDATE %1 SET %2 = %3 WHERE rowid = %4 AND %2 IS NOT %3").arg(p.table, p.column, value, id)))
                return value;
    }
    return {};
}

bool toldIn(const Texts& before, const Texts& after, const QString& name) {
    for (const ColumnGuide& g : columnGuides()) {
        if (!g.from.contains(name)) continue;
        const auto cells = [&](const Texts& texts) -> QStringList {
            const auto file = texts.find(g.file);
            if (file == texts.end()) return {};
            const auto columns = columnsOf(file->second);
            const auto found = columns.find(g.column);
            return found == columns.end() ? QStringList() : found->second;
        };
        if (cells(before) != cells(after)) return true;
    }
    return false;
}

// One value of each column of the book is altered in turn, a column a table at once: the file and column that the guide
// names for it must then say something else.
TEST_F(WholeExport, WhateverChangesInTheBookChangesInTheFilesThatAreToTellIt) {
    const Texts before = exported(full);
    std::vector<Pending> pending;
    {
        const RawBook raw(full);
        for (const QString& table : raw.column(f("SELECT name FROM sqlite_schema WHERE type = 'table'")))
            for (const QString& column : raw.column(f("SELECT name FROM pragma_table_info('%1')").arg(table)))
                if (!excepted(table, column) && !kHistory.contains(table + u'.' + column))
                    pending.push_back({table, column, candidates(raw, table, column)});
    }
    const size_t all = pending.size();
    EXPECT_GT(all, 150U);
    const QString copy = dir.filePath(f("altered.yardwright"));
    for (int round = 0; !pending.empty() && round < 80; ++round) {
        QFile::remove(copy);
        ASSERT_TRUE(QFile::copy(full, copy));
        std::set<QString> tables;
        std::vector<QString> tried;
        {
            const RawBook raw(copy);
            for (Pending& p : pending) {
                if (!tables.insert(p.table).second) continue;
                ASSERT_NE(altered(raw, p), QString()) << p.name().toStdString() << " comes out nowhere";
                tried.push_back(p.name());
            }
        }
        const Texts after = exported(copy, "after");
        std::erase_if(pending, [&](const Pending& p) {
            return std::ranges::find(tried, p.name()) != tried.end() && toldIn(before, after, p.name());
        });
    }
    EXPECT_TRUE(pending.empty());
}

TEST_F(WholeExport, HistoryAndItsFieldsComeOut) {
    const QString book = dir.filePath(f("small.yardwright"));
    {
        const auto session = Session::create(book, clock);
        core::edit::Edit yard = [](const core::edit::EditContext& c) {
            core::Yard y;
            y.name = f("North");
            return core::edit::newYard(c, y);
        };
        session->setAuthor(f("Ana"));
        session->apply(yard);
        session->undo();
        session->redo();
    }
    const Texts files = exported(book);
    EXPECT_EQ(files.at(f("history.csv")), QByteArray("line,at,by,kind,of,what,reason\n"
                                                     "1,2026-09-20T12:00:00.000Z,Ana,do,,Added yard North,\n"
                                                     "2,2026-09-20T12:00:00.000Z,Ana,undo,1,Undone: Added yard North,\n"
                                                     "3,2026-09-20T12:00:00.000Z,Ana,redo,1,Done again: Added yard "
                                                     "North,\n"));
    const auto fields = columnsOf(files.at(f("changes.csv")));
    EXPECT_EQ(fields.at(f("line")).front(), f("1"));
    EXPECT_EQ(fields.at(f("did")).front(), f("added"));
    EXPECT_TRUE(fields.at(f("after")).contains(f("North")));
    EXPECT_TRUE(fields.at(f("did")).contains(f("taken-away")));
}

// What an import does not read is known by name: the guide says so of each file.
TEST_F(WholeExport, ReadIntoANewBookItIsTheSameButForTheFilesThatAreNamed) {
    const Texts once = exported(full);
    std::set<QString> read;
    std::set<QString> readable;
    for (const ColumnGuide& g : columnGuides())
        if (g.column.isEmpty() && g.from.contains(f("import"))) read.insert(g.file);
    for (const auto kind : core::exchange::kReadKinds) readable.insert(core::exchange::fileName(kind));
    EXPECT_EQ(read, readable);
    const Workbench second;
    const auto report = second.import(once);
    ASSERT_TRUE(report.good()) << report.faults.lines().join(u'\n').toStdString();
    EXPECT_EQ(second.check(), QStringList());
    const Texts again = second.exported();
    for (const QString& file : read) {
        const auto found = again.find(file);
        EXPECT_EQ(found == again.end() ? QByteArray() : found->second, once.at(file)) << file.toStdString();
    }
}

TEST(FileGuide, ThePageOfTheRepositoryIsMadeOfIt) {
    const QString path = f(YW_SOURCE_DIR "/core/exchange/README.md");
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString page = QString::fromUtf8(file.readAll());
    file.close();
    const qsizetype at = page.indexOf(f("\n## "));
    ASSERT_GT(at, 0);
    if (!qEnvironmentVariableIsEmpty("YW_UPDATE_GOLDEN")) {
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write((page.left(at) + core::exchange::guidePage()).toUtf8());
        return;
    }
    EXPECT_EQ(page.mid(at).toStdString(), core::exchange::guidePage().toStdString())
        << "make it anew: YW_UPDATE_GOLDEN=1 whole_export_test --gtest_filter='FileGuide*'";
}

} // namespace
} // namespace tests::exchange
