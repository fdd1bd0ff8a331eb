#include "tests/ui/book_of_test.h"
#include "tests/ui/test_dialogs.h"

#include "core/edit/backups.h"
#include "core/edit/edits.h"
#include "core/store/database.h"
#include "ui/backup/where.h"
#include "ui/salvage/salvage_window.h"
#include "ui/window/commands.h"
#include "ui/window/main_window.h"
#include "ui/window/salvage_commands.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QDir>
#include <QFile>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

namespace {

using core::edit::Session;
using ui::salvage::SalvageWindow;

/// A file to open, as one was chosen.
struct Chosen : tests::TestDialogs {
    QString open;
    std::optional<QString> bookToOpen() override { return open; }
};

/// A window without a book, and a damaged one on the disk, of which there is a backup or none.
struct Damaged : testing::Test {
    Damaged() { ui::backup::setFolder(shelf.path()); }
    ~Damaged() override { ui::backup::setFolder({}); }

    void SetUp() override {
        window = std::make_unique<ui::window::MainWindow>(book.clock(), dialogs);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    void backUp() const {
        const auto session = Session::open(book.path(), book.clock());
        core::edit::BackupRun run(*session, shelf.path());
        while (run.step(200)) {
        }
    }
    void newYard(const QString& name) const {
        Session::open(book.path(), book.clock())->apply([&](const core::edit::EditContext& c) {
            core::Yard yard;
            yard.name = name;
            return core::edit::newYard(c, yard);
        });
    }
    /// The first page of the file, where its list of tables begins.
    QByteArray spoil() const {
        QFile file(book.path());
        EXPECT_TRUE(file.open(QIODevice::ReadWrite));
        QByteArray bytes = file.readAll();
        bytes.replace(100, 3000, QByteArray(3000, '\0'));
        file.seek(0);
        file.write(bytes);
        return bytes;
    }
    static QByteArray bytesOf(const QString& path) {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    /// Opened, and read.
    SalvageWindow* opened() const {
        EXPECT_FALSE(window->openBook(book.path()));
        auto* shown = window->findChild<SalvageWindow*>();
        EXPECT_NE(shown, nullptr);
        if (!shown) return nullptr;
        EXPECT_TRUE(QTest::qWaitFor([shown] { return !shown->account().isEmpty(); }, 20'000));
        shown->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(shown));
        return shown;
    }
    bool hasYard(const QString& name) const {
        const auto yards = window->desk()->session().yards();
        return std::ranges::any_of(yards, [&](const core::Yard& y) { return y.name == name; });
    }

    tests::BookOfTest book;
    Chosen dialogs;
    QTemporaryDir shelf;
    std::unique_ptr<ui::window::MainWindow> window;
};

TEST_F(Damaged, ByKeysWhatCanBeReadBecomesANewBookAndTheDamagedOneStaysAsItIs) {
    newYard(QStringLiteral("Late yard"));
    const QByteArray spoilt = spoil();
    SalvageWindow* shown = opened();
    ASSERT_NE(shown, nullptr);
    EXPECT_FALSE(shown->backupButton()->isEnabled());
    EXPECT_TRUE(shown->backupText().startsWith(QStringLiteral("There is none"))) << shown->backupText().toStdString();
    EXPECT_TRUE(shown->account().contains(QStringLiteral("What could be read of"))) << shown->account().toStdString();
    EXPECT_EQ(QApplication::focusWidget(), shown->makeButton());
    QTemporaryDir folder;
    dialogs.made = folder.filePath(QStringLiteral("again.yardwright"));
    QTest::keyClick(shown->makeButton(), Qt::Key_Space);
    ASSERT_TRUE(QTest::qWaitFor([this] { return window->desk() != nullptr; }, 20'000));
    EXPECT_EQ(window->desk()->session().path(), QFileInfo(*dialogs.made).canonicalFilePath());
    EXPECT_TRUE(hasYard(QStringLiteral("Late yard")));
    EXPECT_EQ(window->desk()->session().check().join(u'\n').toStdString(), "");
    EXPECT_TRUE(window->saying().startsWith(QStringLiteral("This is what could be read.")))
        << window->saying().toStdString();
    EXPECT_TRUE(bytesOf(book.path()) == spoilt);
    const QString text = folder.filePath(QStringLiteral("again - what was salvaged.txt"));
    EXPECT_TRUE(QString::fromUtf8(bytesOf(text)).startsWith(QStringLiteral("What could be read of")));
}

TEST_F(Damaged, ByKeysTheNewestBackupTakesItsPlaceAndItIsSaidWhatThatLacks) {
    backUp();
    newYard(QStringLiteral("Late yard"));
    const QByteArray spoilt = spoil();
    SalvageWindow* shown = opened();
    ASSERT_NE(shown, nullptr);
    EXPECT_TRUE(shown->backupText().contains(QStringLiteral("which it has not: 1.")) &&
                shown->backupText().contains(QStringLiteral("Added yard Late yard")))
        << shown->backupText().toStdString();
    EXPECT_TRUE(shown->backupText().contains(QStringLiteral("Holds put up since then would be gone")))
        << shown->backupText().toStdString();
    ASSERT_EQ(QApplication::focusWidget(), shown->makeButton()); // never the backup
    QTest::keyClick(shown->makeButton(), Qt::Key_Tab, Qt::ShiftModifier);
    ASSERT_EQ(QApplication::focusWidget(), shown->backupButton());
    dialogs.expectCorrection = true; // answered with nothing
    QTest::keyClick(shown->backupButton(), Qt::Key_Space);
    ASSERT_EQ(dialogs.asked.size(), 1);
    EXPECT_EQ(shown->said(), QStringLiteral("The book stays: a correction needs a reason and a name."));
    QApplication::processEvents();
    EXPECT_TRUE(bytesOf(book.path()) == spoilt);
    dialogs.correctionAnswer = core::edit::Correction{QStringLiteral("Ana"), QStringLiteral("the disk failed")};
    QTest::keyClick(shown->backupButton(), Qt::Key_Space);
    ASSERT_TRUE(QTest::qWaitFor([this] { return window->desk() != nullptr; }, 20'000));
    EXPECT_FALSE(hasYard(QStringLiteral("Late yard")));
    const QDir beside(QFileInfo(book.path()).absolutePath());
    const QStringList aside = beside.entryList({QStringLiteral("* before *.yardwright")}, QDir::Files);
    ASSERT_EQ(aside.size(), 1);
    EXPECT_TRUE(bytesOf(beside.filePath(aside.front())) == spoilt);
    const core::edit::HistoryLine line = window->desk()->session().history(1).front();
    EXPECT_EQ(line.by, QStringLiteral("Ana"));
    EXPECT_EQ(line.reason, QStringLiteral("the disk failed"));
}

TEST_F(Damaged, WhatIsFoundOnlyWhenItsRowsAreReadIsOfferedToo) {
    {
        const auto db = core::store::Database::open(book.path(), core::store::Access::ReadWrite);
        db->exec("PRAGMA ignore_check_constraints = ON");
        db->exec("UPDATE colony SET since = '2026-02-30' WHERE label = 'A2'");
    }
    SalvageWindow* shown = opened();
    ASSERT_NE(shown, nullptr);
    EXPECT_TRUE(shown->makeButton()->isEnabled());
    EXPECT_TRUE(shown->account().contains(QStringLiteral("What could be read of"))) << shown->account().toStdString();
}

TEST_F(Damaged, ANameThatSaysDamagedIsNone) {
    dialogs.expectError = true;
    const QString path = shelf.filePath(QStringLiteral("damaged, not a book of this program.yardwright"));
    ASSERT_TRUE(QFile::copy(book.path(), path));
    core::store::Database::open(path, core::store::Access::ReadWrite)->exec("PRAGMA user_version = 999");
    EXPECT_FALSE(window->openBook(path));
    ASSERT_EQ(dialogs.errors.size(), 1);
    EXPECT_TRUE(dialogs.errors.front().contains(QStringLiteral("newer version")))
        << dialogs.errors.front().toStdString();
    EXPECT_EQ(window->findChild<SalvageWindow*>(), nullptr);
}

TEST_F(Damaged, FromTheMenuABookOfNothingIsRefusedInOneSentence) {
    const QString path = shelf.filePath(QStringLiteral("other.yardwright"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray(5000, 'x'));
    file.close();
    dialogs.open = path;
    dialogs.expectError = true;
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QTest::keyClick(window.get(), Qt::Key_R, Qt::ControlModifier | Qt::AltModifier);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !dialogs.errors.isEmpty(); }, 20'000));
    EXPECT_TRUE(dialogs.errors.front().startsWith(QStringLiteral("Nothing of a book can be read")))
        << dialogs.errors.front().toStdString();
    auto* shown = window->findChild<SalvageWindow*>();
    ASSERT_NE(shown, nullptr);
    EXPECT_FALSE(shown->makeButton()->isEnabled());
    EXPECT_TRUE(shown->againButton()->isVisible());
}

} // namespace
