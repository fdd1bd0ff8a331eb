#include "core/base/damaged.h"
#include "core/store/backup.h"
#include "core/store/check.h"
#include "core/store/history_rows.h"
#include "tests/store/child.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>

#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace core;
using namespace core::store;

namespace {

QStringList filesIn(const QString& folder) {
    return QDir(folder).entryList(QDir::Files | QDir::Hidden | QDir::NoDotAndDotDot);
}

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void writeFile(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

void rawSql(const QString& path, const char* sql) {
    sqlite3* db = nullptr;
    sqlite3_open(QFile::encodeName(path).constData(), &db);
    EXPECT_EQ(sqlite3_exec(db, sql, nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
    sqlite3_close(db);
}

/// The sentence of the Error(Book) that opening throws, for reading and for writing alike; what else happened if not.
std::string refusal(const QString& path) {
    std::string said;
    for (const Access access : {Access::ReadOnly, Access::ReadWrite}) {
        try {
            Database::open(path, access);
            return "opened";
        } catch (const Error& e) {
            if (e.kind() != Error::Kind::Book) return std::string("another kind: ") + e.what();
            if (!said.empty() && said != e.what()) return said + " / " + e.what();
            said = e.what();
        }
    }
    return said;
}

bool says(const std::string& sentence, const std::string& part) { return sentence.find(part) != std::string::npos; }

TEST(Open, RefusesWhatIsMissing) {
    QTemporaryDir dir;
    const QString path = dir.filePath("none.yardwright");
    EXPECT_EQ(refusal(path), "There is no book " + path.toStdString() + ".");
    EXPECT_EQ(filesIn(dir.path()), QStringList());
}

TEST(Open, RefusesAFolder) {
    QTemporaryDir dir;
    EXPECT_EQ(refusal(dir.path()), dir.path().toStdString() + " is a folder, not a book.");
}

TEST(Open, RefusesWhatIsNoBookAndLeavesItAsItWas) {
    QTemporaryDir dir;
    const QString path = dir.filePath("x.yardwright");
    QByteArray rubbish;
    for (int i = 0; i < 10000; ++i) rubbish.append(static_cast<char>((i * 7919) >> 3));
    const QByteArray header("SQLite format 3\0", 16);
    for (const QByteArray& bytes :
         {QByteArray(), QByteArray("colony,yard\nA,North\n"), rubbish, header, header + rubbish}) {
        writeFile(path, bytes);
        const std::string said = refusal(path);
        EXPECT_TRUE(says(said, "not a book") || says(said, "damaged")) << bytes.size() << ": " << said;
        EXPECT_EQ(bytesOf(path), bytes);
        EXPECT_EQ(filesIn(dir.path()), QStringList("x.yardwright"));
    }
}

TEST(Open, RefusesAnotherProgramsDatabase) {
    QTemporaryDir dir;
    const QString path = dir.filePath("x.yardwright");
    rawSql(path, "CREATE TABLE yard (id INTEGER PRIMARY KEY); PRAGMA user_version = 1");
    EXPECT_TRUE(says(refusal(path), "is not a book of this program"));
}

TEST(Open, RefusesANewerBook) {
    TestBook book;
    book.close();
    rawSql(book.path(), "PRAGMA user_version = 99");
    const QByteArray before = bytesOf(book.path());
    EXPECT_TRUE(says(refusal(book.path()), "newer version"));
    EXPECT_EQ(bytesOf(book.path()), before);
}

TEST(Open, RefusesABookWithoutVersion) {
    TestBook book;
    book.close();
    rawSql(book.path(), "PRAGMA user_version = 0");
    EXPECT_TRUE(says(refusal(book.path()), "damaged"));
}

TEST(Open, RefusesATruncatedBook) {
    TestBook book;
    book.yard("North");
    book.close();
    const QByteArray whole = bytesOf(book.path());
    for (const qsizetype size : {qsizetype(50), qsizetype(512), qsizetype(4096), whole.size() / 2, whole.size() - 1}) {
        writeFile(book.path(), whole.left(size));
        const std::string said = refusal(book.path());
        EXPECT_TRUE(says(said, "damaged") || says(said, "not a book")) << size << ": " << said;
    }
}

TEST(Open, RefusesOrReadsABookWithAnyPageSpoilt) {
    TestBook book;
    book.yard("North");
    book.close();
    const QByteArray whole = bytesOf(book.path());
    for (qsizetype page = 0; page < whole.size() / 4096; ++page) {
        QByteArray spoilt = whole;
        for (qsizetype i = page * 4096; i < page * 4096 + 64; ++i) spoilt[i] = static_cast<char>(0xA5);
        writeFile(book.path(), spoilt);
        const std::string said = refusal(book.path());
        EXPECT_TRUE(says(said, "damaged") || says(said, "not a book")) << page << ": " << said;
    }
}

/// How the type of what opening throws speaks of the book.
std::string typeOf(const QString& path) {
    try {
        Database::open(path, Access::ReadOnly);
    } catch (const Damaged&) {
        return "damaged";
    } catch (const NoBook&) {
        return "no book";
    } catch (const Error&) {
        return "neither";
    }
    return "opened";
}

TEST(Open, TellsDamageByTheTypeOfTheError) {
    TestBook book;
    book.yard("North");
    book.close();
    const QByteArray whole = bytesOf(book.path());
    for (qsizetype page = 1; page < whole.size() / 4096; ++page) {
        QByteArray spoilt = whole;
        for (qsizetype i = page * 4096; i < page * 4096 + 64; ++i) spoilt[i] = static_cast<char>(0xA5);
        writeFile(book.path(), spoilt);
        EXPECT_EQ(typeOf(book.path()), "damaged") << page;
    }
    writeFile(book.path(), whole.left(whole.size() - 1));
    EXPECT_EQ(typeOf(book.path()), "damaged");
    writeFile(book.path(), QByteArray(16, 'x') + whole.mid(16));
    EXPECT_EQ(typeOf(book.path()), "no book");
    writeFile(book.path(), QByteArray());
    EXPECT_EQ(typeOf(book.path()), "no book");
    writeFile(book.path(), whole);
    rawSql(book.path(), "CREATE TABLE more (a)");
    EXPECT_EQ(typeOf(book.path()), "damaged");
    writeFile(book.path(), whole);
    rawSql(book.path(), "PRAGMA user_version = 99");
    EXPECT_EQ(typeOf(book.path()), "neither");
    EXPECT_EQ(typeOf(book.folder() + "/damaged.yardwright"), "neither");
    EXPECT_EQ(typeOf(book.folder()), "neither");
}

TEST(Open, RefusesForeignTriggersViewsTablesAndChangedOnes) {
    for (const char* sql :
         {"CREATE TRIGGER t AFTER INSERT ON yard BEGIN DELETE FROM yard; END", "CREATE VIEW v AS SELECT * FROM yard",
          "CREATE TABLE more (a)", "CREATE INDEX more ON yard (note)", "CREATE VIRTUAL TABLE more USING fts5 (a)",
          "CREATE TEMP TABLE t (a); PRAGMA writable_schema = ON; INSERT INTO sqlite_schema VALUES ('trigger', "
          "'sqlite_t', "
          "'yard', 0, 'CREATE TRIGGER sqlite_t AFTER INSERT ON yard BEGIN DELETE FROM yard; END')",
          "DROP INDEX visit_mites", "ALTER TABLE yard ADD COLUMN more TEXT"}) {
        TestBook book;
        book.close();
        rawSql(book.path(), sql);
        EXPECT_TRUE(says(refusal(book.path()), "changed by another program")) << sql << refusal(book.path());
    }
}

TEST(Open, RunsNothingOfATableThatIsNotOurs) {
    TestBook book;
    book.yard("North");
    book.close();
    // A CHECK that would keep a check of the pages busy for longer than anyone waits.
    rawSql(book.path(), "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, 'key TEXT NOT NULL', "
                        "'key TEXT NOT NULL CHECK (length(hex(zeroblob(400000000))) > 1)') WHERE name = 'yard'");
    EXPECT_TRUE(says(refusal(book.path()), "changed by another program"));
}

TEST(Open, KnowsNoOtherFileAndCanStillCopyTheBook) {
    TestBook book;
    const std::string attach = "ATTACH '" + (book.folder() + "/other").toStdString() + "' AS other";
    EXPECT_THROW(book.db().exec(attach), Error);
    copyBook(book.db(), book.folder() + "/copy.yardwright");
    EXPECT_THROW(book.db().exec(attach), Error);
    EXPECT_EQ(filesIn(book.folder()).filter("other"), QStringList());
}

/// What SQLite writes where a commit is one of several files: a journal with another file's name at its end. Source:
/// SQLite, "Database File Format", section 3.
QByteArray journalNaming(const QByteArray& other, qint64 bookBytes) {
    const auto number = [](quint32 n) { return QByteArray::fromHex(QByteArray::number(n, 16).rightJustified(8, '0')); };
    const QByteArray magic = QByteArray::fromHex("d9d505f920a163d7");
    QByteArray head =
        magic + number(0) + number(0) + number(static_cast<quint32>(bookBytes / 4096)) + number(512) + number(4096);
    head.append(512 - head.size(), '\0');
    quint32 sum = 0;
    for (const char c : other) sum += static_cast<quint32>(c);
    return head + number(0x40001) + other + number(static_cast<quint32>(other.size())) + number(sum) + magic;
}

TEST(Open, LetsNoJournalNameAnotherFile) {
    TestBook book;
    book.close();
    const QString other = book.folder() + "/other.txt";
    writeFile(other, "someone else's\n");
    const qint64 size = QFileInfo(book.path()).size();
    writeFile(book.path() + "-journal", journalNaming(other.toUtf8(), size));
    const std::string said = refusal(book.path());
    EXPECT_TRUE(says(said, "book.yardwright-journal beside it names another file")) << said;
    EXPECT_EQ(bytesOf(other), "someone else's\n");
    // A torn end of a journal names nothing: it is taken back as any other.
    QByteArray torn = journalNaming(other.toUtf8(), size);
    torn[torn.size() - 12] = static_cast<char>(torn[torn.size() - 12] + 1);
    writeFile(book.path() + "-journal", torn);
    EXPECT_EQ(refusal(book.path()), "opened");
    EXPECT_EQ(bytesOf(other), "someone else's\n");
}

TEST(Open, FollowsNoLinkBesideTheBook) {
    TestBook book;
    book.close();
    const QString other = book.folder() + "/other.txt";
    for (const char* ending : {"-journal", "-wal", "-shm"}) {
        const QString beside = book.path() + ending;
        ASSERT_TRUE(QFile::link(other, beside)); // of a file that is not there: it would be made
        EXPECT_TRUE(says(refusal(book.path()), "is a link or a folder")) << ending;
        ASSERT_TRUE(QFile::remove(beside));
        ASSERT_TRUE(QDir().mkdir(beside));
        EXPECT_TRUE(says(refusal(book.path()), "is a link or a folder")) << ending;
        ASSERT_TRUE(QDir().rmdir(beside));
    }
    EXPECT_FALSE(QFile::exists(other));
    EXPECT_EQ(refusal(book.path()), "opened");
}

TEST(Open, MakesNoNamesOfWhatIsNoId) {
    TestBook book;
    EXPECT_EQ(book.db().bookId().size(), 36);
    book.close();
    rawSql(book.path(), "UPDATE book SET uuid = '/../../other-0000-0000-0000-00000000'");
    book.reopen();
    EXPECT_EQ(book.db().bookId(), QString());
}

TEST(Open, BringsAWriteAheadBookBackToOneFile) {
    TestBook book;
    book.close();
    rawSql(book.path(), "PRAGMA journal_mode = WAL");
    book.reopen();
    EXPECT_EQ(book.db().prepare("PRAGMA journal_mode").step(), true);
    book.yard("North");
    book.close();
    EXPECT_EQ(filesIn(book.folder()), QStringList("book.yardwright"));
}

TEST(Open, FollowsLinksToOneLock) {
    TestBook book;
    const QString link = book.folder() + "/link.yardwright";
    ASSERT_TRUE(QFile::link(book.path(), link));
    EXPECT_THROW(Database::open(link, Access::ReadWrite), Error);
    EXPECT_EQ(boxKinds(*Database::open(link, Access::ReadOnly)).size(), 5u);
}

// Lock and journal lie beside a name: under two of them a book would have two of each.
TEST(Open, WritesNoBookOfTwoNamesAndReadsIt) {
    TestBook book;
    book.yard("North");
    book.close();
    const QString other = book.folder() + "/other.yardwright";
    ASSERT_EQ(link(QFile::encodeName(book.path()).constData(), QFile::encodeName(other).constData()), 0);
    for (const QString& name : {book.path(), other}) {
        try {
            Database::open(name, Access::ReadWrite);
            FAIL() << "written under two names";
        } catch (const Error& e) {
            EXPECT_EQ(std::string(e.what()),
                      "The book " + name.toStdString() +
                          " cannot be written: its file has a second name (a hard link), and written under both it "
                          "would be spoilt. Copy it to a name of its own first, and open that.");
            EXPECT_EQ(e.kind(), Error::Kind::Book);
        }
        EXPECT_EQ(yards(*Database::open(name, Access::ReadOnly)).size(), 1u);
    }
    EXPECT_EQ(filesIn(book.folder()), (QStringList{"book.yardwright", "other.yardwright"}));
    ASSERT_TRUE(QFile::remove(other));
    // As a program that was killed between two names leaves it, where a disk cannot change names in one go.
    const QString making = book.folder() + "/.new-0123456789ab.yardwright";
    ASSERT_EQ(link(QFile::encodeName(book.path()).constData(), QFile::encodeName(making).constData()), 0);
    book.reopen();
    EXPECT_FALSE(QFile::exists(making));
}

TEST(Open, WaitsForNoPipeAndReadsNoDevice) {
    const QTemporaryDir dir;
    const QString pipe = dir.filePath("pipe.yardwright");
    ASSERT_EQ(mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
    EXPECT_EQ(refusal(pipe), pipe.toStdString() + " is a pipe, not a book.");
    EXPECT_EQ(refusal("/dev/zero"), "/dev/zero is a device, not a book.");
    EXPECT_THROW(Database::isOlder(pipe), Error);
}

TEST(Open, OneWriterAndAnyReaders) {
    TestBook book;
    book.yard("North");
    try {
        Database::open(book.path(), Access::ReadWrite);
        FAIL() << "a second writer";
    } catch (const Error& e) {
        EXPECT_EQ(e.kind(), Error::Kind::Book);
        EXPECT_TRUE(says(e.what(), "held by another")) << e.what();
    }
    const std::string other = inChild([&] {
        EXPECT_THROW(Database::open(book.path(), Access::ReadWrite), Error);
        const auto reader = Database::open(book.path(), Access::ReadOnly);
        return yards(*reader).at(0).name.toStdString() + std::to_string(checkBook(*reader).size());
    });
    EXPECT_EQ(other, "North0");
    book.yard("South"); // the reader's coming and going left our lock and our locks in the file alone
    book.close();
    EXPECT_EQ(filesIn(book.folder()), QStringList("book.yardwright"));
}

TEST(Open, AReaderCannotWrite) {
    TestBook book;
    book.reopen(Access::ReadOnly);
    EXPECT_TRUE(book.db().readOnly());
    try {
        book.yard("North");
        FAIL() << "written";
    } catch (const Error& e) {
        EXPECT_EQ(e.kind(), Error::Kind::Book);
    }
}

TEST(Open, AKilledWriterLeavesNoLockAndNoHalfEdit) {
    TestBook book;
    book.yard("North");
    book.close();
    HoldingChild writer([&] {
        auto db = Database::open(book.path(), Access::ReadWrite);
        (void)db.release(); // stays open until the kill
    });
    EXPECT_THROW(Database::open(book.path(), Access::ReadWrite), Error);
    writer.kill();
    HoldingChild half([&] {
        auto* db = Database::open(book.path(), Access::ReadWrite).release();
        db->setCacheMegabytes(1);
        auto* transaction = new Transaction(*db);
        Stand s;
        s.yard = {1};
        BulkInserter stands(*db, Table::Stand);
        for (int i = 1; i <= 50000; ++i) { // more than the cache: pages of the file are overwritten before the commit
            s.name = QString::number(i);
            stands.insert(i, toRow(s));
        }
        (void)transaction;
    });
    EXPECT_TRUE(filesIn(book.folder()).contains("book.yardwright-journal"));
    half.kill();
    book.reopen(Access::ReadOnly); // takes the half edit back, as it may write
    EXPECT_EQ(countRows(book.db(), Table::Stand), 0);
    EXPECT_EQ(checkBook(book.db()), std::vector<QString>());
    book.reopen();
    EXPECT_EQ(yards(book.db()).size(), 1u);
}

TEST(Open, ReadsInAReadOnlyFolderAndRefusesToWriteThere) {
    TestBook book;
    book.yard("North");
    book.close();
    chmod(QFile::encodeName(book.folder()).constData(), 0555);
    chmod(QFile::encodeName(book.path()).constData(), 0644);
    const std::string said = inChild(
        [&] {
            const auto reader = Database::open(book.path(), Access::ReadOnly);
            std::string text = yards(*reader).at(0).name.toStdString();
            try {
                Database::open(book.path(), Access::ReadWrite);
            } catch (const Error& e) {
                text += e.kind() == Error::Kind::Book ? std::string(": ") + e.what() : "";
            }
            try {
                Database::create(book.folder() + "/new.yardwright");
            } catch (const Error& e) {
                text += e.kind() == Error::Kind::Book ? std::string(": ") + e.what() : "";
            }
            return text;
        },
        true);
    chmod(QFile::encodeName(book.folder()).constData(), 0755);
    EXPECT_TRUE(says(said, "North: The book")) << said;
    EXPECT_TRUE(says(said, "the file or its folder is read-only")) << said;
    EXPECT_TRUE(says(said, "new.yardwright cannot be made")) << said;
}

TEST(Open, RefusesAnUnreadableBook) {
    TestBook book;
    book.close();
    chmod(QFile::encodeName(book.folder()).constData(), 0777);
    chmod(QFile::encodeName(book.path()).constData(), 0000);
    EXPECT_TRUE(says(inChild([&] { return refusal(book.path()); }, true), "cannot be read"));
}

TEST(Create, RefusesAnExistingFileAndAMissingFolder) {
    TestBook book;
    book.close();
    const QByteArray before = bytesOf(book.path());
    EXPECT_THROW(Database::create(book.path()), Error);
    EXPECT_EQ(bytesOf(book.path()), before);
    EXPECT_THROW(Database::create(book.folder() + "/none/x.yardwright"), Error);
    ASSERT_TRUE(QFile::link(book.folder() + "/nowhere", book.folder() + "/dangling.yardwright"));
    EXPECT_THROW(Database::create(book.folder() + "/dangling.yardwright"), Error);
    EXPECT_TRUE(filesIn(book.folder()).filter(".new-").isEmpty());
}

TEST(Create, GivesEachBookAnIdOfItsOwn) {
    TestBook one;
    TestBook other;
    EXPECT_NE(one.db().bookId(), other.db().bookId());
}

} // namespace
