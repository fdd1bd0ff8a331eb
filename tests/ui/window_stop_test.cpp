#include "core/edit/edits.h"
#include "tests/ui/long_work.h"
#include "ui/busy/long_edit.h"
#include "ui/copies/copies_window.h"
#include "ui/copies/lines_list.h"

#include <QDialog>
#include <QTreeWidget>

// What takes long is stopped at its first telling, by Esc: nothing is changed. What is being committed says that it can
// no longer be stopped.

namespace {

using namespace tests;
using core::edit::Session;

QStringList filesIn(const QString& folder) {
    return QDir(folder).entryList(QDir::Files | QDir::Hidden | QDir::NoDotAndDotDot, QDir::Name);
}

struct OlderBook : LongWork {
    void SetUp() override {
        LongWork::SetUp();
        ASSERT_TRUE(QFile::remove(book()));
        ASSERT_TRUE(QFile::copy(QStringLiteral(YW_GOLDEN "/version-1.yardwright"), book()));
        ASSERT_TRUE(QFile::setPermissions(book(), QFile::ReadOwner | QFile::WriteOwner));
    }
};

TEST_F(OlderBook, IsBroughtUpToDateUnderAPanelWhoseStopLeavesItByteForByte) {
    const QByteArray before = bytesAt(book());
    {
        const AtOnce esc(true);
        EXPECT_FALSE(window->openBook(book(), false));
        EXPECT_EQ(esc.panels, 1);
    }
    EXPECT_EQ(said(), "Stopped: the book is as it was.");
    EXPECT_EQ(window->desk(), nullptr);
    EXPECT_EQ(bytesAt(book()), before);
    EXPECT_EQ(filesIn(folder.path()), QStringList(QStringLiteral("book.yardwright"))) << "no copy, no lock";
    const AtOnce seen(false);
    EXPECT_TRUE(window->openBook(book(), false));
    EXPECT_EQ(seen.panels, 1);
    EXPECT_FALSE(anyPanel());
    ASSERT_NE(window->desk(), nullptr);
    EXPECT_EQ(window->desk()->session().check(), QStringList());
    EXPECT_EQ(bytesAt(folder.filePath(QStringLiteral("book.version-1.yardwright"))).mid(60, 4),
              QByteArray::fromHex("00000001"))
        << "the copy's user_version";
    EXPECT_TRUE(window->openBook(book(), false));
    EXPECT_EQ(seen.panels, 1) << "of today's version nothing takes long";
}

struct LongUndo : LongWork {
    void SetUp() override {
        LongWork::SetUp();
        open();
        QByteArray text = "colony,date,supers,note\n";
        const QByteArray label = session().colony(core::ColonyId{1})->label.toUtf8();
        for (int i = 0; i < 3000; ++i)
            text += label + ',' + core::isoText(core::dayOf(2027, 1, 1) + i).toLatin1() + ",1,calm\n";
        ASSERT_TRUE(QDir().mkpath(out("in")));
        QFile file(out("in/visits.csv"));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        file.close();
        ASSERT_TRUE(window->importFolder(out("in"))) << dialogs.faults.join(u'\n').toStdString();
        window->desk()->setWhileWritten([this] { return std::make_shared<ui::busy::LongEdit>(session(), *window, 0); });
    }
    Session& session() const { return window->desk()->session(); }
    void undo() const { QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier); }
};

TEST_F(LongUndo, IsStoppedByEscAndThenNothingIsUndone) {
    const auto line = session().history(1).front().seq;
    {
        const AtOnce esc(true);
        undo();
        EXPECT_EQ(esc.panels, 1);
    }
    EXPECT_EQ(said(), "Stopped: nothing was written.");
    EXPECT_EQ(session().history(1).front().seq, line);
    EXPECT_EQ(session().check(), QStringList());
    EXPECT_FALSE(anyPanel());
    const AtOnce seen(false);
    undo();
    EXPECT_EQ(session().history(1).front().seq, line + 1);
    EXPECT_EQ(seen.panels, 1);
    EXPECT_EQ(seen.said.join(u'|').toStdString(),
              "Writing the rows into the book|Writing…|Writing… This can no longer be stopped.");
    EXPECT_TRUE(seen.greyed) << "the stop button";
    EXPECT_FALSE(anyPanel());
}

TEST_F(LongUndo, OfFewRowsShowsNoPanel) {
    const AtOnce seen(false);
    session().apply([](const core::edit::EditContext& c) {
        core::Yard yard;
        yard.name = QStringLiteral("Late yard");
        return core::edit::newYard(c, yard);
    });
    undo();
    EXPECT_EQ(said().substr(0, 7), "Undone:");
    EXPECT_EQ(seen.panels, 0);
}

TEST_F(LongWork, ADialogThatOpensOverThePanelCanBeAnswered) {
    ui::busy::Panel panel(QStringLiteral("Work"), *window);
    QDialog dialog(window.get());
    dialog.setModal(true);
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_FALSE(panel.busy().stopped()) << "the key was the dialog's";
    QTest::keyClick(window.get(), Qt::Key_Escape);
    EXPECT_TRUE(panel.busy().stopped());
}

struct StoppedBackups : LongBackups {};

TEST_F(StoppedBackups, WhatDiffersIsNotKnownAndNothingTakesThePlace) {
    make();
    {
        const AtOnce esc(true);
        QTest::keyClick(shown->compareButton(), Qt::Key_Space);
        EXPECT_EQ(esc.panels, 1);
    }
    EXPECT_EQ(shown->said().toStdString(), "Stopped: what differs is not known.");
    EXPECT_EQ(shown->differences(), QString());
    EXPECT_FALSE(shown->placeButton()->isEnabled());
}

TEST_F(StoppedBackups, ARestoreThatIsStoppedLeavesTheBookAndNoFile) {
    make();
    window->desk()->session().apply([](const core::edit::EditContext& c) {
        core::Yard yard;
        yard.name = QStringLiteral("Late yard");
        return core::edit::newYard(c, yard);
    });
    QTest::keyClick(shown->compareButton(), Qt::Key_Space);
    ASSERT_TRUE(shown->placeButton()->isEnabled());
    const QByteArray before = bytesAt(book());
    const AtOnce esc(true);
    QTest::keyClick(shown->placeButton(), Qt::Key_Space);
    EXPECT_TRUE(QTest::qWaitFor([&] { return said() == "Stopped: the book is as it was."; }, 20'000)) << said();
    EXPECT_EQ(esc.panels, 1);
    ASSERT_NE(window->desk(), nullptr) << "it is open again";
    EXPECT_EQ(bytesAt(book()), before);
    EXPECT_EQ(QDir(folder.path()).entryList({QStringLiteral("*.yardwright")}, QDir::Files | QDir::Hidden),
              QStringList(QStringLiteral("book.yardwright")));
    EXPECT_EQ(window->desk()->session().check(), QStringList());
}

TEST_F(LongWork, AComparisonOfCopiesGivesWayToTheNextOne) {
    open();
    for (const char* name : {"book (1).yardwright", "book (2).yardwright"}) {
        ASSERT_TRUE(QFile::copy(book(), out(name)));
        const auto there = Session::open(out(name), clock);
        there->apply([name](const core::edit::EditContext& c) {
            core::Yard yard;
            yard.name = QLatin1StringView(name);
            return core::edit::newYard(c, yard);
        });
    }
    press(Qt::Key_O);
    auto* shown = window->page()->findChild<ui::copies::CopiesWindow*>();
    ASSERT_NE(shown, nullptr);
    auto* list = shown->findChild<QTreeWidget*>(QStringLiteral("copies"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return list->topLevelItemCount() == 2; }, 20'000));
    for (const int row : {0, 1, 0, 1}) list->setCurrentItem(list->topLevelItem(row)); // each stops the one before
    EXPECT_EQ(shown->compared().toStdString(), "Comparing…");
    EXPECT_EQ(shown->onlyThere()->topLevelItemCount(), 0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return shown->onlyThere()->topLevelItemCount() > 0; }, 20'000));
    for (int i = 0; i < 20; ++i) QCoreApplication::processEvents();
    EXPECT_EQ(shown->onlyThere()->topLevelItemCount(), 1);
    QString text;
    for (int i = 0; i < shown->onlyThere()->columnCount(); ++i) text += shown->onlyThere()->topLevelItem(0)->text(i);
    EXPECT_TRUE(text.contains(list->topLevelItem(1)->text(0).chopped(11))) << text.toStdString();
    list->setCurrentItem(list->topLevelItem(0));
    window.reset(); // in the middle of it
}

} // namespace
