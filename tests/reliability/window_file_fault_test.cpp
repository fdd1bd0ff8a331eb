#include "tests/support/no_rights.h"
#include "tests/support/small_files.h"
#include "tests/ui/recording.h"

#include "core/edit/edits.h"
#include "ui/backup/backups_window.h"
#include "ui/backup/keeping.h"
#include "ui/backup/where.h"
#include "ui/look/text_size.h"
#include "ui/visit/visit_form.h"
#include "ui/window/backup_commands.h"
#include "ui/window/commands.h"
#include "ui/window/export_commands.h"
#include "ui/window/remembered.h"

#include <QAction>
#include <QDir>
#include <QFile>
#include <QSettings>

#include <sqlite3.h>
#include <sys/stat.h>

// Files besides the book, and the book when it is left: a full disk, a folder that vanishes, one that may only be read.

namespace tests::reliability {

namespace {

struct FileFault : Recording {
    QString out(const char* name) const { return dir.filePath(QLatin1StringView(name)); }
    QTemporaryDir dir;
};

TEST_F(FileFault, AnExportThatCannotBeWrittenIsSaidAndNothingIsLeft) {
    dialogs.expectError = true;
    dialogs.file = out("there.csv");
    QAction* csv = window->commands()->exports()->csv;
    {
        const SmallFiles full(100);
        csv->trigger();
    }
    ASSERT_EQ(dialogs.errors.size(), 1);
    EXPECT_TRUE(
        dialogs.errors[0].startsWith(out("there/")) &&
        dialogs.errors[0].endsWith(QStringLiteral(" cannot be written: the disk is full. Make room and try again.")))
        << dialogs.errors[0].toStdString();
    EXPECT_FALSE(QFileInfo::exists(out("there")));
    QCoreApplication::processEvents();
    QFile inTheWay(out("stick"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    dialogs.file = out("stick/there.csv");
    csv->trigger();
    ASSERT_EQ(dialogs.errors.size(), 2);
    EXPECT_EQ(
        dialogs.errors[1],
        QStringLiteral("The folder %1 cannot be made: %2 is no folder. Expected a folder, or a place where one can "
                       "be made.")
            .arg(out("stick/there"), out("stick")));
    dialogs.file = out("there.csv");
    csv->trigger();
    EXPECT_EQ(dialogs.errors.size(), 2);
    EXPECT_EQ(said(), "The book's files are in the folder " + out("there").toStdString() + '.');
    EXPECT_GT(QFile(out("there/visits.csv")).size(), 100);
}

TEST_F(FileFault, ARestoreOnAFullDiskLeavesTheBookAndCanBeTriedAgain) {
    const QString shelf = dir.filePath(QStringLiteral("shelf"));
    ui::backup::setFolder(shelf);
    auto* keeping = window->commands()->backups()->keeping();
    keeping->begin();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !keeping->running(); }, 20'000));
    write([](const core::edit::EditContext& c) {
        core::Yard yard;
        yard.name = QStringLiteral("Late yard");
        return core::edit::newYard(c, yard);
    });
    const auto restore = [&](const std::function<void()>& press) {
        window->commands()->backups()->show->trigger();
        auto* shown = window->page()->findChild<ui::backup::BackupsWindow*>();
        ASSERT_NE(shown, nullptr);
        QTest::keyClick(shown->compareButton(), Qt::Key_Space);
        ASSERT_TRUE(shown->placeButton()->isEnabled());
        QTest::keyClick(shown->placeButton(), Qt::Key_Space);
        press();
    };
    dialogs.expectError = true;
    restore([&] {
        const SmallFiles full(20'000);
        EXPECT_TRUE(QTest::qWaitFor([&] { return !dialogs.errors.isEmpty(); }, 20'000));
    });
    ASSERT_EQ(dialogs.errors.size(), 1);
    EXPECT_TRUE(dialogs.errors[0].startsWith(QStringLiteral("The disk "))) << dialogs.errors[0].toStdString();
    ASSERT_NE(window->desk(), nullptr) << "open as it was";
    EXPECT_EQ(window->desk()->session().yards().size(), 2U);
    EXPECT_EQ(QDir(QFileInfo(book.path()).absolutePath())
                  .entryList({QStringLiteral("*.yardwright")}, QDir::Files | QDir::Hidden),
              QStringList(QFileInfo(book.path()).fileName()))
        << "nothing half is left";
    EXPECT_EQ(window->desk()->session().check(), QStringList());
    restore([&] {
        EXPECT_TRUE(QTest::qWaitFor([&] { return said().starts_with("The backup is the book now."); }, 20'000))
            << said();
    });
    EXPECT_EQ(window->desk()->session().yards().size(), 1U);
    EXPECT_EQ(dialogs.errors.size(), 1);
    ui::backup::setFolder({});
}

/// A folder that vanishes while a visit is typed, as a stick that is pulled.
struct Leaving : Recording {
    void SetUp() override {
        Recording::SetUp();
        choose("A2");
        key(Qt::Key_L, Qt::ControlModifier);
        type("5");
        ASSERT_TRUE(QDir().rename(home(), away()));
        type(".25");
        ASSERT_TRUE(said().starts_with("Not saved: what is typed cannot be kept in ")) << said();
    }
    void TearDown() override {
        if (QDir(away()).exists()) QDir().rename(away(), home());
        Recording::TearDown();
    }
    QString home() const { return QFileInfo(book.path()).absolutePath(); }
    QString away() const { return home() + QStringLiteral(".pulled"); }
    std::string typed() const { return window->page()->form()->draft()[ui::visit::Field::BeesTop].toStdString(); }
};

TEST_F(Leaving, WhatIsTypedAndCannotBeKeptIsAskedAboutBeforeTheWindowCloses) {
    dialogs.leave = false;
    EXPECT_FALSE(window->close());
    ASSERT_EQ(dialogs.leaving.size(), 1);
    EXPECT_TRUE(dialogs.leaving[0].startsWith(QStringLiteral("What is typed cannot be kept in ")));
    EXPECT_TRUE(dialogs.leaving[0].endsWith(
        QStringLiteral("\n\nClose the book nonetheless? What is typed and not saved is lost then.")))
        << dialogs.leaving[0].toStdString();
    EXPECT_TRUE(window->isVisible());
    EXPECT_EQ(typed(), "5.25");
    dialogs.leave = true;
    EXPECT_TRUE(window->close());
    EXPECT_EQ(dialogs.leaving.size(), 2);
}

TEST_F(Leaving, NorIsAnotherBookOpenedOverIt) {
    const BookOfTest other;
    dialogs.leave = false;
    EXPECT_FALSE(window->openBook(other.path(), false));
    EXPECT_EQ(dialogs.leaving.size(), 1);
    EXPECT_EQ(window->desk()->session().path(), book.path());
    EXPECT_EQ(typed(), "5.25");
}

TEST_F(Leaving, OnceItCanBeKeptNobodyIsAskedAndItIsThereAgain) {
    ASSERT_TRUE(QDir().rename(away(), home()));
    EXPECT_TRUE(window->close());
    EXPECT_EQ(dialogs.leaving, QStringList());
    window.reset();
    Recording::SetUp();
    choose("A2");
    key(Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(typed(), "5.25");
}

TEST_F(FileFault, WhatIsRememberedAndCannotBeWrittenIsSaidOnce) {
    auto* remembered = window->findChild<ui::window::Remembered*>();
    ASSERT_NE(remembered, nullptr);
    QSettings().sync();
    remembered->look();
    const std::string before = said();
    const NoRights nobody;
    QSettings().setValue(QStringLiteral("book/recent"), QStringList(QStringLiteral("/no/book")));
    remembered->look();
    EXPECT_NE(said(), before);
    EXPECT_TRUE(QString::fromStdString(said()).startsWith(QStringLiteral(
        "What the program remembers on this machine (recent books, sizes, columns, names) cannot be written to ")))
        << said();
    window->say(QStringLiteral("Something else"));
    QSettings().setValue(QStringLiteral("book/recent"), QStringList());
    remembered->look();
    EXPECT_EQ(said(), "Something else");
    QSettings().remove(QStringLiteral("book/recent"));
}

void exec(sqlite3* db, const char* sql) {
    ASSERT_EQ(sqlite3_exec(db, sql, nullptr, nullptr, nullptr), SQLITE_OK) << sql;
}

// A program was killed in the middle of an edit, and the disk is now one that may only be read.
TEST(ReadOnlyDisk, OfABookWithAHalfEditIsSaidThatItMustBeWrittenFirst) {
    const BookOfTest book;
    const QTemporaryDir there;
    const QString path = there.filePath(QStringLiteral("half.yardwright"));
    const QString journal = QStringLiteral("-journal");
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open(QFile::encodeName(book.path()).constData(), &db), SQLITE_OK);
    exec(db, "PRAGMA cache_size = 1; BEGIN IMMEDIATE; UPDATE visit SET note = hex(randomblob(4000))");
    ASSERT_GT(QFile(book.path() + journal).size(), 0);
    ASSERT_TRUE(QFile::copy(book.path(), path));
    ASSERT_TRUE(QFile::copy(book.path() + journal, path + journal));
    exec(db, "ROLLBACK");
    sqlite3_close(db);
    const QByteArray names[] = {QFile::encodeName(path), QFile::encodeName(path + journal)};
    for (const QByteArray& name : names) ASSERT_EQ(chmod(name.constData(), 0444), 0);
    ASSERT_EQ(chmod(QFile::encodeName(there.path()).constData(), 0555), 0);
    TestDialogs dialogs;
    dialogs.expectError = true;
    ui::window::MainWindow window(book.clock(), dialogs);
    {
        const NoRights nobody;
        EXPECT_FALSE(window.openBook(path, false));
    }
    ASSERT_EQ(dialogs.errors.size(), 1);
    EXPECT_EQ(dialogs.errors[0],
              path + QStringLiteral(": An edit of the book was cut short, and it cannot be read before that edit is "
                                    "taken back, for which it must be written: allow that, or copy the book and the "
                                    "file with -journal at its name's end beside it to a disk that can be written."));
    EXPECT_EQ(window.desk(), nullptr);
    ASSERT_EQ(chmod(QFile::encodeName(there.path()).constData(), 0700), 0);
    for (const QByteArray& name : names) ASSERT_EQ(chmod(name.constData(), 0644), 0);
    EXPECT_TRUE(window.openBook(path, false));
    EXPECT_EQ(window.desk()->session().check(), QStringList());
    EXPECT_FALSE(QFile::exists(path + journal)) << "the half edit is taken back";
}

} // namespace

} // namespace tests::reliability
