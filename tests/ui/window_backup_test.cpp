#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "ui/backup/backups_window.h"
#include "ui/backup/keeping.h"
#include "ui/backup/where.h"
#include "ui/window/backup_commands.h"
#include "ui/window/commands.h"

#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTreeWidget>

namespace {

using ui::backup::BackupsWindow;
using ui::backup::Keeping;

struct BackedUp : tests::OpenWindow {
    BackedUp() { ui::backup::setFolder(shelf.path()); }
    ~BackedUp() override { ui::backup::setFolder({}); }

    Keeping* keeping() const { return window->commands()->backups()->keeping(); }
    BackupsWindow* open() const {
        window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
        QTest::keyClick(window.get(), Qt::Key_U, Qt::ControlModifier | Qt::AltModifier);
        auto* shown = window->page()->findChild<BackupsWindow*>();
        EXPECT_NE(shown, nullptr);
        if (shown) {
            shown->activateWindow();
            EXPECT_TRUE(QTest::qWaitForWindowActive(shown));
        }
        return shown;
    }
    static void press(QPushButton* button) {
        button->setFocus(Qt::TabFocusReason);
        QTest::keyClick(button, Qt::Key_Space);
    }
    void untilDone() const {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !keeping()->running(); }, 20'000));
    }
    void newYard(const QString& name) const {
        window->desk()->session().apply([&](const core::edit::EditContext& c) {
            core::Yard yard;
            yard.name = name;
            return core::edit::newYard(c, yard);
        });
    }
    void suspected(const char* label) const {
        core::Visit v;
        v.colony = book.idOf(QLatin1StringView(label));
        v.day = book.clock().day;
        v.signs.add(core::Sign::Afb);
        window->desk()->session().apply([&](const core::edit::EditContext& c) { return core::edit::logVisit(c, v); });
    }
    bool hasYard(const QString& name) const {
        const auto yards = window->desk()->session().yards();
        return std::ranges::any_of(yards, [&](const core::Yard& y) { return y.name == name; });
    }
    QStringList made() const { return QDir(shelf.path()).entryList(QDir::Files); }

    QTemporaryDir shelf;
};

TEST_F(BackedUp, ByKeysABackupIsMadeComparedAndPutInPlaceAndTheBookOfBeforeIsKept) {
    BackupsWindow* shown = open();
    ASSERT_NE(shown, nullptr);
    EXPECT_EQ(shown->list()->topLevelItemCount(), 0);
    press(shown->makeButton());
    untilDone();
    ASSERT_EQ(shown->list()->topLevelItemCount(), 1);
    EXPECT_TRUE(shown->said().startsWith(QStringLiteral("Backed up and checked"))) << shown->said().toStdString();
    newYard(QStringLiteral("Late yard"));
    EXPECT_FALSE(shown->placeButton()->isEnabled()); // what differs was not looked at
    press(shown->compareButton());
    EXPECT_TRUE(shown->differences().contains(QStringLiteral("Added yard Late yard")))
        << shown->differences().toStdString();
    ASSERT_TRUE(shown->placeButton()->isEnabled());
    press(shown->placeButton());
    EXPECT_TRUE(QTest::qWaitFor([this] { return window->desk() && !hasYard(QStringLiteral("Late yard")); }, 20'000));
    EXPECT_TRUE(window->saying().startsWith(QStringLiteral("The backup is the book now.")))
        << window->saying().toStdString();
    const QDir beside(QFileInfo(window->desk()->session().path()).absolutePath());
    const QStringList aside = beside.entryList({QStringLiteral("* before *.yardwright")}, QDir::Files);
    ASSERT_EQ(aside.size(), 1);
    const auto before =
        core::edit::Session::open(beside.filePath(aside.front()), book.clock(), core::edit::Session::Access::ReadOnly);
    EXPECT_TRUE(std::ranges::any_of(before->yards(),
                                    [](const core::Yard& y) { return y.name == QStringLiteral("Late yard"); }));
}

TEST_F(BackedUp, AFoulbroodHoldGoesWithABackupOnlyForAReasonAndANameWhichAreKept) {
    BackupsWindow* shown = open();
    ASSERT_NE(shown, nullptr);
    press(shown->makeButton());
    untilDone();
    press(shown->compareButton());
    EXPECT_TRUE(shown->differences().contains(QStringLiteral("No hold would go.")))
        << shown->differences().toStdString();
    ASSERT_TRUE(shown->placeButton()->isEnabled());
    suspected("A2");
    EXPECT_FALSE(shown->placeButton()->isEnabled()); // what was shown is no longer what differs
    const auto before = book.history();
    press(shown->compareButton());
    EXPECT_TRUE(shown->differences().contains(QStringLiteral("Holds that would go: ")) &&
                shown->differences().contains(QStringLiteral("A2: afb-suspected")))
        << shown->differences().toStdString();
    dialogs.expectCorrection = true; // answered with nothing
    press(shown->placeButton());
    ASSERT_EQ(dialogs.asked.size(), 1);
    EXPECT_TRUE(dialogs.asked.front().contains(QStringLiteral("A2: afb-suspected")))
        << dialogs.asked.front().toStdString();
    EXPECT_EQ(shown->said(), QStringLiteral("The book stays: a correction needs a reason and a name."));
    EXPECT_EQ(book.history(), before);
    dialogs.correctionAnswer = core::edit::Correction{QStringLiteral("Ana"), QStringLiteral("spoilt by an import")};
    press(shown->placeButton());
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return window->saying().startsWith(QStringLiteral("The backup is the book now.")); }, 20'000))
        << window->saying().toStdString();
    const core::edit::HistoryLine line = window->desk()->session().history(1).front();
    EXPECT_EQ(line.by, QStringLiteral("Ana"));
    EXPECT_EQ(line.reason, QStringLiteral("spoilt by an import"));
    EXPECT_TRUE(line.text.contains(QStringLiteral("A2: afb-suspected"))) << line.text.toStdString();
}

TEST_F(BackedUp, OneThatIsDamagedIsSaidSoAndNeverTakesThePlace) {
    BackupsWindow* shown = open();
    ASSERT_NE(shown, nullptr);
    keeping()->begin();
    untilDone();
    ASSERT_EQ(made().size(), 1);
    QFile file(shelf.filePath(made().front()));
    ASSERT_TRUE(file.resize(file.size() / 2));
    dialogs.expectError = true;
    press(shown->compareButton());
    EXPECT_EQ(dialogs.errors.size(), 1);
    EXPECT_FALSE(shown->placeButton()->isEnabled());
}

TEST_F(BackedUp, AreMadeByThemselvesAfterOpeningAndAfterAnEditButNotTwiceOfTheSame) {
    Keeping keeps(*window->desk());
    int count = 0;
    QObject::connect(&keeps, &Keeping::made, [&] { ++count; });
    keeps.setPatience(1, 1);
    EXPECT_TRUE(QTest::qWaitFor([&] { return count == 1; }, 20'000));
    newYard(QStringLiteral("Another"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return count == 2; }, 20'000));
    keeps.finish(); // it has all: none is made
    EXPECT_EQ(count, 2);
    EXPECT_EQ(made().size(), 2);
    newYard(QStringLiteral("Last"));
    keeps.finish();
    EXPECT_EQ(made().size(), 3);
}

TEST_F(BackedUp, AFolderThatCannotBeIsSaidAndNothingIsLost) {
    BackupsWindow* shown = open();
    ASSERT_NE(shown, nullptr);
    QFile inTheWay(shelf.filePath(QStringLiteral("file")));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    shown->folderField()->selectAll();
    QTest::keyClicks(shown->folderField(), shelf.filePath(QStringLiteral("file/below")));
    QTest::keyClick(shown->folderField(), Qt::Key_Return);
    press(shown->makeButton());
    EXPECT_TRUE(shown->said().startsWith(QStringLiteral("No backup was made."))) << shown->said().toStdString();
    EXPECT_FALSE(keeping()->running());
}

} // namespace
