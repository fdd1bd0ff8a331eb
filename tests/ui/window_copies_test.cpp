#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "ui/copies/copies_notice.h"
#include "ui/copies/copies_text.h"
#include "ui/copies/copies_window.h"
#include "ui/copies/known.h"
#include "ui/copies/lines_list.h"
#include "ui/history/change_view.h"
#include "ui/look/colours.h"
#include "ui/visit/visit_form.h"
#include "ui/window/copy_commands.h"
#include "ui/window/read_banner.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QPushButton>
#include <QTreeWidget>

#include <cstdio>

namespace {

using core::edit::Session;
using ui::copies::CopiesWindow;

/// Where asked, for the eye: light and dark.
void picture(QWidget& shown, const char* name) {
    const QString to = qEnvironmentVariable("YW_PICTURES");
    if (to.isEmpty()) return;
    for (const bool dark : {true, false}) {
        QApplication::setPalette(ui::look::paletteOf(ui::look::colours(dark)));
        for (int i = 0; i < 20; ++i) QCoreApplication::processEvents();
        EXPECT_TRUE(shown.grab().save(
            QStringLiteral("%1/%2-%3.png")
                .arg(to, QLatin1StringView(name), dark ? QStringLiteral("dark") : QStringLiteral("light"))));
    }
}

/// What a sync program does to the file of the open book, and beside it.
struct Synced : tests::OpenWindow {
    QString folder() const { return QFileInfo(book.path()).absolutePath(); }
    QString beside(const char* name) const { return folder() + u'/' + QLatin1StringView(name); }
    QString copyAs(const char* name) const {
        EXPECT_TRUE(QFile::copy(book.path(), beside(name)));
        return beside(name);
    }
    void moveOver(const QString& from, const QString& to) const {
        ASSERT_EQ(std::rename(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()), 0);
    }
    void editThere(const QString& path, const char* label, const char* by) const {
        const auto there = Session::open(path, book.clock());
        there->setAuthor(QLatin1StringView(by));
        const core::ColonyId hive = book.idOf(QLatin1StringView(label));
        there->apply([&](const core::edit::EditContext& c) {
            return core::edit::carryHive(c, hive, {1000 * (label[1] - '0'), 5000}, c.today());
        });
    }
    void editHere(const char* label) const { drag(at(label), at(label) + QPoint(0, -100)); }
    /// As who comes back to the window from another program.
    void comeBack() const {
        QEvent activated(QEvent::WindowActivate);
        QCoreApplication::sendEvent(window.get(), &activated);
    }
    QString banner() const { return window->banner()->shown(); }
    QPushButton* offered(const QAction* action) const { return copies()->buttonOf(action); }
    ui::window::CopyCommands* copies() const { return ui::window::copiesOf(*window); }
    void press(QPushButton* button) const {
        ASSERT_NE(button, nullptr);
        ASSERT_TRUE(button->isVisible() && button->isEnabled());
        button->setFocus(Qt::TabFocusReason);
        QTest::keyClick(button, Qt::Key_Space);
        QCoreApplication::processEvents();
    }
    void leaveNote(const char* host) const {
        QFile note(book.path() + QStringLiteral("-lock"));
        ASSERT_TRUE(note.open(QIODevice::WriteOnly | QIODevice::Truncate));
        note.write(QByteArray("who=Bo\nhost=") + host + "\nsince=2026-09-14T08:05:00Z\nmachine=0123456789abcdef\n");
    }
};

TEST_F(Synced, AnotherMachinesNoteMakesTheWindowReadUntilSomeoneSaysThatItIsClosedThere) {
    window.reset();
    leaveNote("shed-pc");
    SetUp();
    EXPECT_TRUE(window->desk()->session().readOnly());
    EXPECT_TRUE(banner().startsWith(QStringLiteral("Bo on shed-pc has this book open since 14 Sep, ")))
        << banner().toStdString();
    EXPECT_TRUE(banner().contains(QStringLiteral("That machine cannot be asked from here"))) << banner().toStdString();
    picture(*window, "noted");
    QTest::keyClick(window.get(), Qt::Key_F5);
    EXPECT_TRUE(window->desk()->session().readOnly()) << "trying again is no answer";
    press(offered(copies()->overrule));
    EXPECT_FALSE(window->desk()->session().readOnly());
    EXPECT_FALSE(window->banner()->isVisible());
    const core::MmPoint before = book.placeOf(QStringLiteral("A1"));
    editHere("A1");
    EXPECT_NE(book.placeOf(QStringLiteral("A1")), before);
}

TEST_F(Synced, ANoteThatComesLaterStopsTheNextEdit) {
    leaveNote("shed-pc");
    const core::MmPoint before = book.placeOf(QStringLiteral("A1"));
    dialogs.expectError = true;
    editHere("A1");
    EXPECT_EQ(book.placeOf(QStringLiteral("A1")), before);
    EXPECT_TRUE(banner().startsWith(QStringLiteral("Bo on shed-pc"))) << banner().toStdString();
    press(offered(copies()->overrule));
    editHere("A1");
    EXPECT_NE(book.placeOf(QStringLiteral("A1")), before);
}

TEST_F(Synced, AnOlderFileInTheBooksPlaceIsSaidAndWhatWasOpenIsKept) {
    const QString older = copyAs("older");
    editHere("A1");
    const core::MmPoint moved = book.placeOf(QStringLiteral("A1"));
    moveOver(older, book.path());
    comeBack();
    EXPECT_TRUE(banner().startsWith(QStringLiteral("The book's file was replaced by another one while it was open")))
        << banner().toStdString();
    EXPECT_TRUE(banner().contains(QStringLiteral("it is kept beside it as “"))) << banner().toStdString();
    picture(*window, "replaced");
    press(offered(copies()->openThere));
    EXPECT_TRUE(QTest::qWaitFor([this] { return banner().isEmpty(); }));
    EXPECT_NE(book.placeOf(QStringLiteral("A1")), moved) << "the older state";
    editHere("A2"); // the window writes again
    const QStringList kept = QDir(folder()).entryList({QStringLiteral("* as it was open *.yardwright")});
    ASSERT_EQ(kept.size(), 1);
    const auto session = Session::open(folder() + u'/' + kept.front(), book.clock(), Session::Access::ReadOnly);
    EXPECT_TRUE(session->history(1).front().text.contains(QStringLiteral("A1")));
}

// Some sync programs give the file that is open the name of a copy, and put theirs in its place.
TEST_F(Synced, WhatWasOpenAndOnlyGotAnotherNameIsNotKeptTwice) {
    const QString older = copyAs("older");
    editHere("A1");
    moveOver(book.path(), beside("copy of shed-pc.yardwright"));
    moveOver(older, book.path());
    comeBack();
    EXPECT_TRUE(banner().contains(QStringLiteral("copy of shed-pc.yardwright"))) << banner().toStdString();
    EXPECT_TRUE(QDir(folder()).entryList({QStringLiteral("* as it was open *")}).isEmpty());
}

TEST_F(Synced, WhatIsTypedStaysTypedAndIsSavedOnceTheFileIsBack) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A2"));
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("5"));
    moveOver(book.path(), beside("away"));
    dialogs.expectError = true;
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(window->page()->form()->isVisible());
    EXPECT_NE(said().find("nothing was written"), std::string::npos) << said();
    EXPECT_TRUE(banner().contains(QStringLiteral("It lies at "))) << banner().toStdString();
    moveOver(beside("away"), book.path());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_FALSE(window->page()->form()->isVisible()) << said();
    const auto visits = book.visitsOf(QStringLiteral("A2"));
    ASSERT_EQ(visits.size(), 2U);
    EXPECT_EQ(visits[0].beesTop, core::Quarters{20});
    EXPECT_FALSE(window->banner()->isVisible());
}

TEST_F(Synced, ADeletedBookIsWrittenToItsPlaceAgain) {
    editHere("A1");
    const core::MmPoint moved = book.placeOf(QStringLiteral("A1"));
    ASSERT_TRUE(QFile::remove(book.path()));
    comeBack();
    EXPECT_TRUE(banner().endsWith(QStringLiteral("This window still has all of it."))) << banner().toStdString();
    picture(*window, "deleted");
    press(offered(copies()->writeAgain));
    EXPECT_TRUE(QTest::qWaitFor([this] { return banner().isEmpty(); }));
    EXPECT_EQ(book.placeOf(QStringLiteral("A1")), moved);
    editHere("A2");
    EXPECT_TRUE(window->saying().endsWith(QStringLiteral("· saved"))) << said();
}

TEST_F(Synced, ADeletedBookIsKeptWhenItsWindowIsLeftForAnother) {
    const QString other = beside("other.yardwright");
    Session::create(other, book.clock());
    ASSERT_TRUE(QFile::remove(book.path()));
    ASSERT_TRUE(window->openBook(other));
    EXPECT_EQ(QDir(folder()).entryList({QStringLiteral("* as it was open *.yardwright")}).size(), 1);
}

TEST_F(Synced, AMovedBookIsOpenedWhereItIs) {
    moveOver(book.path(), beside("moved.yardwright"));
    comeBack();
    press(offered(copies()->openMoved));
    EXPECT_TRUE(QTest::qWaitFor([this] { return banner().isEmpty(); }));
    EXPECT_EQ(QFileInfo(window->desk()->session().path()).fileName(), QStringLiteral("moved.yardwright"));
}

TEST_F(Synced, AFileThatWasWrittenOverIsSaidAndNothingIsWritten) {
    const QString older = copyAs("older");
    editHere("A1");
    QFile from(older);
    ASSERT_TRUE(from.open(QIODevice::ReadOnly));
    const QByteArray bytes = from.readAll();
    QFile to(book.path());
    ASSERT_TRUE(to.open(QIODevice::WriteOnly | QIODevice::Truncate));
    to.write(bytes);
    to.close();
    dialogs.expectError = true;
    editHere("A3");
    EXPECT_TRUE(banner().startsWith(QStringLiteral("Another program wrote over"))) << banner().toStdString();
    QFile now(book.path());
    ASSERT_TRUE(now.open(QIODevice::ReadOnly));
    EXPECT_EQ(now.readAll(), bytes);
    now.close();
    press(offered(copies()->openThere));
    EXPECT_TRUE(QTest::qWaitFor([this] { return banner().isEmpty(); }));
    editHere("A3");
    EXPECT_TRUE(window->saying().endsWith(QStringLiteral("· saved"))) << said();
}

TEST_F(Synced, TheBookThatIsOpenIsOpenedAgainAndStillWritten) {
    ASSERT_TRUE(window->openBook(book.path()));
    EXPECT_EQ(banner(), QString());
    editHere("A1");
    EXPECT_TRUE(window->saying().endsWith(QStringLiteral("· saved"))) << said();
}

TEST_F(Synced, WhatIsNoBookInTheBooksPlaceIsNotOpenedAndTheWindowKeepsWhatItHas) {
    QFile junk(beside("junk"));
    ASSERT_TRUE(junk.open(QIODevice::WriteOnly));
    junk.write(QByteArray(9000, 'x'));
    junk.close();
    moveOver(beside("junk"), book.path());
    comeBack();
    EXPECT_TRUE(banner().contains(QStringLiteral("it is kept beside it as “"))) << banner().toStdString();
    dialogs.expectError = true;
    press(offered(copies()->openThere));
    EXPECT_TRUE(QTest::qWaitFor([this] { return !dialogs.errors.isEmpty(); }));
    EXPECT_EQ(window->desk()->session().yards().size(), 1U);
    EXPECT_TRUE(window->page()->isVisible());
}

struct SyncedCopies : Synced {
    CopiesWindow* open() const {
        window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
        QTest::keyClick(window.get(), Qt::Key_O, Qt::ControlModifier | Qt::AltModifier);
        auto* shown = window->page()->findChild<CopiesWindow*>();
        EXPECT_NE(shown, nullptr);
        EXPECT_TRUE(!shown || QTest::qWaitFor([&] { return !shown->busy(); }, 20'000));
        return shown;
    }
    static QStringList linesOf(const ui::copies::LinesList* list) {
        QStringList lines;
        for (int i = 0; i < list->topLevelItemCount(); ++i) lines << list->topLevelItem(i)->text(1);
        return lines;
    }
};

TEST_F(SyncedCopies, AreComparedInAWindowLineByLine) {
    editThere(copyAs("test (copy of shed-pc).yardwright"), "A4", "Bo");
    editHere("A1");
    CopiesWindow* shown = open();
    ASSERT_NE(shown, nullptr);
    ASSERT_EQ(shown->list()->topLevelItemCount(), 1);
    EXPECT_EQ(shown->list()->topLevelItem(0)->text(1), QStringLiteral("went on apart: each has changes of its own"));
    EXPECT_EQ(shown->list()->topLevelItem(0)->text(3), QStringLiteral("Bo"));
    EXPECT_TRUE(shown->compared().contains(QStringLiteral(
        "this book has 1 change that the copy has not, and the copy has 1 change that this book has not")))
        << shown->compared().toStdString();
    ASSERT_EQ(linesOf(shown->onlyHere()).size(), 1);
    EXPECT_TRUE(linesOf(shown->onlyHere()).front().contains(QStringLiteral("A1")));
    ASSERT_EQ(linesOf(shown->onlyThere()).size(), 1);
    EXPECT_TRUE(linesOf(shown->onlyThere()).front().contains(QStringLiteral("A4")));
    shown->onlyThere()->setCurrentItem(nullptr);
    shown->onlyThere()->setFocus(Qt::TabFocusReason);
    QTest::keyClick(shown->onlyThere(), Qt::Key_Home);
    EXPECT_GT(shown->change()->model()->rowCount(), 0) << "what it did, from what to what";
    picture(*shown, "copies");
    press(shown->textButton());
    const QString text = QGuiApplication::clipboard()->text();
    EXPECT_TRUE(text.contains(QStringLiteral("Only in the copy:\n    2026-09-15 "))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("by Bo"))) << text.toStdString();
}

TEST_F(SyncedCopies, AreOpenedInsteadOrPutAsideAndNeverDeleted) {
    editThere(copyAs("copy.yardwright"), "A4", "Bo");
    CopiesWindow* shown = open();
    ASSERT_NE(shown, nullptr);
    press(shown->openButton());
    ASSERT_TRUE(QTest::qWaitFor([this] {
        return QFileInfo(window->desk()->session().path()).fileName() == QStringLiteral("copy.yardwright");
    }));
    shown = open();
    ASSERT_NE(shown, nullptr);
    ASSERT_EQ(shown->list()->topLevelItemCount(), 1);
    EXPECT_EQ(shown->list()->topLevelItem(0)->text(1), QStringLiteral("an older state of this book"));
    press(shown->asideButton());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !shown->busy(); }, 20'000));
    EXPECT_EQ(shown->list()->topLevelItemCount(), 0);
    EXPECT_TRUE(shown->said().startsWith(QStringLiteral("Put aside: "))) << shown->said().toStdString();
    EXPECT_EQ(QDir(beside("put aside")).entryList(QDir::Files).size(), 1);
    EXPECT_FALSE(QFile::exists(book.path()));
}

TEST_F(SyncedCopies, AreSaidAfterOpeningUntilSomeoneLooks) {
    const QString copy = copyAs("copy.yardwright");
    editThere(copy, "A4", "Bo");
    copies()->lookByItself();
    const auto told = [this] {
        EXPECT_TRUE(window->openBook(book.path()));
        return QTest::qWaitFor([this] { return copies()->notice()->isVisible(); }, 20'000);
    };
    ASSERT_TRUE(told());
    EXPECT_TRUE(copies()->notice()->said().startsWith(QStringLiteral("“copy.yardwright” beside this book is a copy")))
        << copies()->notice()->said().toStdString();
    picture(*window, "notice");
    press(copies()->notice()->laterButton());
    EXPECT_FALSE(copies()->notice()->isVisible());
    ASSERT_TRUE(told()) << "at the next opening again";
    press(copies()->notice()->lookButton());
    auto* shown = window->page()->findChild<CopiesWindow*>();
    ASSERT_NE(shown, nullptr);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !shown->busy() && shown->list()->topLevelItemCount() == 1; }, 20'000));
    EXPECT_FALSE(copies()->notice()->isVisible());
    EXPECT_TRUE(ui::copies::news(window->desk()->session().bookId(), core::edit::copiesBeside(book.path())).empty());
    editThere(copy, "A5", "Bo");
    EXPECT_FALSE(ui::copies::news(window->desk()->session().bookId(), core::edit::copiesBeside(book.path())).empty())
        << "it went on";
}

#ifdef YW_PROGRAM
struct TwoProcesses : Synced {
    struct Ended {
        int status;
        QString said;
    };
    Ended setElsewhere(const QString& value) const {
        QProcess program;
        program.start(QStringLiteral(YW_PROGRAM),
                      {QStringLiteral("set"), book.path(), QStringLiteral("strength.max_age_days"), value});
        EXPECT_TRUE(program.waitForFinished(60'000));
        return {program.exitCode(), QString::fromUtf8(program.readAllStandardError())};
    }
};

TEST_F(TwoProcesses, CompareSaysOnTheCommandLineWhatTheWindowSays) {
    const QString copy = copyAs("copy.yardwright");
    editThere(copy, "A4", "Bo");
    editHere("A1");
    QProcess program;
    program.start(QStringLiteral(YW_PROGRAM), {QStringLiteral("compare"), book.path(), copy});
    ASSERT_TRUE(program.waitForFinished(60'000));
    EXPECT_EQ(program.exitCode(), 0);
    const QString said = QString::fromUtf8(program.readAllStandardOutput());
    EXPECT_EQ(said, ui::copies::wholeText(copy, core::edit::compareBooks(book.path(), copy)));
    EXPECT_TRUE(said.contains(QStringLiteral("went on apart"))) << said.toStdString();
}

TEST_F(TwoProcesses, TheOtherOneIsRefusedWhileTheWindowWritesAndWritesOnceItIsClosed) {
    const Ended refused = setElsewhere(QStringLiteral("20"));
    EXPECT_EQ(refused.status, 5);
    EXPECT_TRUE(refused.said.contains(QStringLiteral("held by another program or window")))
        << refused.said.toStdString();
    EXPECT_NE(window->desk()->session().settings().strengthMaxAgeDays, 20);
    window.reset();
    const Ended done = setElsewhere(QStringLiteral("20"));
    EXPECT_EQ(done.status, 0) << done.said.toStdString();
    leaveNote("shed-pc");
    const Ended noted = setElsewhere(QStringLiteral("21"));
    EXPECT_EQ(noted.status, 5);
    EXPECT_TRUE(noted.said.contains(QStringLiteral("Bo on shed-pc"))) << noted.said.toStdString();
    EXPECT_TRUE(noted.said.contains(book.path() + QStringLiteral("-lock"))) << noted.said.toStdString();
}
#endif

} // namespace
