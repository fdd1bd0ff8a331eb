#include "core/store/backup.h"
#include "core/store/check.h"
#include "tests/store/child.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>

#include <csignal>
#include <sys/resource.h>

using namespace core;
using namespace core::store;

namespace {

QStringList filesIn(const QString& folder) {
    return QDir(folder).entryList(QDir::Files | QDir::Hidden | QDir::NoDotAndDotDot, QDir::Name);
}

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

std::vector<Migration> withSteps(std::initializer_list<const char*> sql) {
    std::vector<Migration> steps = bookMigrations();
    for (const char* s : sql) steps.push_back({static_cast<int>(steps.size()) + 1, s});
    return steps;
}

/// The book's version today.
const int kNow = bookMigrations().back().version;

QString copyName(const char* more = "") {
    return QStringLiteral("book.version-%1%2.yardwright").arg(kNow).arg(QLatin1String(more));
}

constexpr const char* kNewColumn = "ALTER TABLE yard ADD COLUMN hedge TEXT;";
constexpr const char* kNewTable =
    "CREATE TABLE shed (id INTEGER PRIMARY KEY, yard INTEGER REFERENCES yard (id)) STRICT;\n"
    "INSERT INTO shed (id, yard) SELECT id, id FROM yard;";

TEST(Migration, BringsAnOlderBookUpToDateAfterACopy) {
    TestBook book;
    book.yard("North");
    book.close();
    const auto steps = withSteps({kNewColumn, kNewTable});
    {
        const auto db = Database::open(book.path(), Access::ReadWrite, steps);
        EXPECT_EQ(db->number("PRAGMA user_version"), kNow + 2);
        EXPECT_EQ(db->number("SELECT yard FROM shed"), 1);
        EXPECT_EQ(db->number("PRAGMA foreign_keys"), 1);
    }
    EXPECT_EQ(filesIn(book.folder()), (QStringList{copyName(), "book.yardwright"}));
    const auto copy = Database::open(book.folder() + u'/' + copyName(), Access::ReadOnly);
    EXPECT_EQ(copy->number("PRAGMA user_version"), kNow);
    EXPECT_EQ(yards(*copy).size(), 1u);
    EXPECT_EQ(checkBook(*copy), std::vector<QString>());
    EXPECT_NO_THROW(Database::open(book.path(), Access::ReadOnly, steps));
    EXPECT_THROW(Database::open(book.path(), Access::ReadWrite), Error) << "newer than the program";
}

TEST(Migration, NeverReplacesAnOlderCopy) {
    TestBook book;
    book.close();
    QFile taken(book.folder() + u'/' + copyName());
    ASSERT_TRUE(taken.open(QIODevice::WriteOnly));
    taken.close();
    Database::open(book.path(), Access::ReadWrite, withSteps({kNewColumn}));
    EXPECT_EQ(filesIn(book.folder()), (QStringList{copyName("-2"), copyName(), "book.yardwright"}));
}

TEST(Migration, AFailedStepLeavesTheBookAsItWas) {
    TestBook book;
    book.yard("North");
    book.close();
    const QByteArray before = bytesOf(book.path());
    const auto steps = withSteps({kNewColumn, "CREATE TABLE half (a) STRICT;"});
    EXPECT_THROW(Database::open(book.path(), Access::ReadWrite, steps), Error);
    EXPECT_EQ(bytesOf(book.path()), before) << "of the step before neither";
    EXPECT_EQ(Database::open(book.path(), Access::ReadOnly)->number("PRAGMA user_version"), kNow);
}

TEST(Migration, AStepThatBreaksForeignKeysIsTakenBack) {
    TestBook book;
    book.yard("North");
    book.close();
    const auto steps =
        withSteps({"CREATE TABLE shed (id INTEGER PRIMARY KEY, yard INTEGER REFERENCES yard (id)) STRICT;\n"
                   "INSERT INTO shed (id, yard) VALUES (1, 77);"});
    EXPECT_THROW(Database::open(book.path(), Access::ReadWrite, steps), Error);
    EXPECT_EQ(Database::open(book.path(), Access::ReadWrite)->number("PRAGMA user_version"), kNow);
}

TEST(Migration, IsNotDoneForAReader) {
    TestBook book;
    book.close();
    try {
        Database::open(book.path(), Access::ReadOnly, withSteps({kNewColumn}));
        FAIL() << "opened";
    } catch (const Error& e) {
        EXPECT_TRUE(e.userMessage().contains("older version")) << e.what();
    }
    EXPECT_EQ(filesIn(book.folder()), QStringList("book.yardwright"));
}

TEST(Backup, IsASoundCopyAndReplacesNothing) {
    TestBook book;
    book.yard("North");
    const QString to = book.folder() + "/copy.yardwright";
    copyBook(book.db(), to);
    const auto copy = Database::open(to, Access::ReadOnly);
    EXPECT_EQ(copy->bookId(), book.db().bookId());
    EXPECT_EQ(yards(*copy).size(), 1u);
    try {
        copyBook(book.db(), to);
        FAIL() << "replaced";
    } catch (const Error& e) {
        EXPECT_EQ(e.kind(), Error::Kind::Book);
        EXPECT_TRUE(e.userMessage().contains("exists already")) << e.what();
    }
}

TEST(Backup, CanBeMadeByAReader) {
    TestBook book;
    book.yard("North");
    const auto reader = Database::open(book.path(), Access::ReadOnly);
    copyBook(*reader, book.folder() + "/copy.yardwright");
    EXPECT_EQ(yards(*Database::open(book.folder() + "/copy.yardwright", Access::ReadOnly)).size(), 1u);
}

TEST(Backup, LeavesNothingBehindWhereItCannotBeWritten) {
    TestBook book;
    EXPECT_THROW(copyBook(book.db(), book.folder() + "/none/copy.yardwright"), Error);
    book.close();
    // A limit on the size of files stands for a disk that fills up.
    const std::string said = inChild([&] {
        const auto db = Database::open(book.path(), Access::ReadOnly);
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit small{65536, 65536};
        setrlimit(RLIMIT_FSIZE, &small);
        try {
            copyBook(*db, book.folder() + "/copy.yardwright");
        } catch (const Error& e) {
            return std::string(e.kind() == Error::Kind::Book ? "refused: " : "other: ") + e.what();
        }
        return std::string("copied");
    });
    EXPECT_EQ(said.rfind("refused: ", 0), 0u) << said;
    EXPECT_EQ(filesIn(book.folder()), QStringList("book.yardwright"));
}

TEST(Write, AFullDiskChangesNothing) {
    TestBook book;
    book.yard("North");
    book.db().exec("PRAGMA max_page_count = 1"); // not below what there is: the book may not grow any more
    const qint64 before = countRows(book.db(), Table::Stand);
    try {
        Transaction transaction(book.db());
        Stand s;
        s.yard = {1};
        BulkInserter stands(book.db(), Table::Stand);
        for (int i = 1; i <= 10000; ++i) {
            s.name = QString::number(i);
            stands.insert(i, toRow(s));
        }
        transaction.commit();
        FAIL() << "written";
    } catch (const Error& e) {
        EXPECT_EQ(e.kind(), Error::Kind::Book);
        EXPECT_TRUE(e.userMessage().contains("disk is full")) << e.what();
    }
    EXPECT_FALSE(book.db().inTransaction());
    EXPECT_EQ(countRows(book.db(), Table::Stand), before);
    book.db().exec("PRAGMA max_page_count = 1000000");
    book.yard("South");
}

} // namespace
