#include "tests/ui/open_window.h"

#include "ui/people/author.h"
#include "ui/people/people_page.h"
#include "ui/people/who_keeps.h"
#include "ui/settings/settings_dialog.h"
#include "ui/visit/visit_form.h"
#include "ui/window/commands.h"

#include <QAction>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTemporaryDir>

namespace {

using ui::people::PeoplePage;
using ui::people::WhoKeeps;

struct People : tests::OpenWindow {
    PeoplePage* page = nullptr;

    void SetUp() override {
        ui::people::rememberAuthor({});
        OpenWindow::SetUp();
    }
    void TearDown() override { ui::people::rememberAuthor({}); }
    void openPage() {
        window->commands()->people->trigger();
        auto* dialog = window->findChild<ui::settings::SettingsDialog*>();
        ASSERT_NE(dialog, nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog));
        dialog->activateWindow();
        QApplication::processEvents();
        page = dialog->findChild<PeoplePage*>();
        ASSERT_TRUE(page && page->isVisible());
    }
    void add(const char* name) const {
        page->name()->setFocus();
        QTest::keyClicks(page->name(), QLatin1StringView(name));
        QTest::keyClick(page->name(), Qt::Key_Return);
    }
    std::vector<core::edit::HistoryLine> history() const { return window->desk()->session().history(3); }
    QStringList offered() const {
        QStringList names;
        for (const core::Person& p : window->desk()->session().people())
            if (p.active) names << p.name;
        return names;
    }
};

TEST_F(People, TheFirstNameWritesFromThenOn) {
    openPage();
    add("Ada Thorn");
    EXPECT_EQ(offered(), QStringList{QStringLiteral("Ada Thorn")});
    EXPECT_EQ(history().front().by, QStringLiteral("Ada Thorn"));
    EXPECT_EQ(ui::people::lastAuthor(), QStringLiteral("Ada Thorn"));
    drag(at("A1"), ground({0, 3000}));
    EXPECT_EQ(history().front().by, QStringLiteral("Ada Thorn"));
}

TEST_F(People, ANameIsRefusedTwiceAndStaysTyped) {
    openPage();
    add("Ada Thorn");
    add("ada thorn");
    EXPECT_FALSE(page->problem().isEmpty());
    EXPECT_EQ(page->name()->text(), QStringLiteral("ada thorn"));
    EXPECT_EQ(offered().size(), 1);
    QTest::keyClicks(page->name(), QStringLiteral("e"));
    EXPECT_TRUE(page->problem().isEmpty());
}

TEST_F(People, SomeoneElseWritesIsNoLongerOfferedAndIsTakenBack) {
    openPage();
    add("Ada Thorn");
    add("Ben Ashdown");
    page->list()->setFocus();
    page->list()->setCurrentRow(0);
    QTest::keyClick(page->list(), Qt::Key_Down);
    QTest::mouseClick(page->writesButton(), Qt::LeftButton);
    EXPECT_EQ(window->desk()->author(), QStringLiteral("Ben Ashdown"));
    QTest::mouseClick(page->offeredButton(), Qt::LeftButton);
    EXPECT_EQ(offered(), QStringList{QStringLiteral("Ada Thorn")});
    EXPECT_TRUE(page->list()->currentItem()->text().contains(QStringLiteral("no longer offered")));
    QTest::mouseClick(page->takeBackButton(), Qt::LeftButton);
    EXPECT_EQ(window->desk()->session().people().size(), 1u);
    window->undo();
    EXPECT_EQ(window->desk()->session().people().size(), 2u);
    EXPECT_EQ(page->list()->count(), 2);
}

TEST_F(People, ANameIsPutRight) {
    openPage();
    add("Ada Torn");
    page->list()->setCurrentRow(0);
    page->name()->setFocus();
    QTest::keyClicks(page->name(), QStringLiteral("Ada Thorn"));
    QTest::mouseClick(page->renameButton(), Qt::LeftButton);
    EXPECT_EQ(offered(), QStringList{QStringLiteral("Ada Thorn")});
    EXPECT_EQ(window->desk()->author(), QStringLiteral("Ada Thorn"));
}

TEST_F(People, TheMenuOffersThemAndAVisitProposesTheOne) {
    openPage();
    add("Ada Thorn");
    add("Ben Ashdown");
    QAction* ben = nullptr;
    for (QAction* a : window->findChildren<QAction*>())
        if (a->text() == QStringLiteral("Ben Ashdown")) ben = a;
    ASSERT_NE(ben, nullptr);
    EXPECT_FALSE(ben->isChecked());
    ben->trigger();
    EXPECT_EQ(window->desk()->author(), QStringLiteral("Ben Ashdown"));
    window->desk()->choose(book.idOf(QStringLiteral("A2")));
    window->page()->logVisit();
    EXPECT_EQ(window->page()->form()->draft()[ui::visit::Field::By], QStringLiteral("Ben Ashdown"));
    EXPECT_FALSE(window->page()->form()->dirty());
    EXPECT_FALSE(window->page()->form()->findChild<QPushButton*>(QStringLiteral("saveVisit"))->isEnabled());
}

TEST_F(People, ANewBookAsksOnceAndCanBeLeftForLater) {
    QTemporaryDir folder;
    EXPECT_FALSE(window->whoKeeps()->isVisible());
    ASSERT_TRUE(window->makeBook(folder.filePath("one.yardwright")));
    const WhoKeeps* asks = window->whoKeeps();
    ASSERT_TRUE(asks->isVisible());
    QTest::keyClick(asks->edit(), Qt::Key_Return);
    EXPECT_TRUE(asks->isVisible());
    QTest::keyClick(asks->edit(), Qt::Key_Escape);
    EXPECT_FALSE(asks->isVisible());
    EXPECT_TRUE(offered().isEmpty());

    ASSERT_TRUE(window->makeBook(folder.filePath("two.yardwright")));
    QTest::keyClicks(asks->edit(), QStringLiteral("Ada Thorn"));
    QTest::keyClick(asks->edit(), Qt::Key_Return);
    EXPECT_FALSE(asks->isVisible());
    EXPECT_EQ(offered(), QStringList{QStringLiteral("Ada Thorn")});
    EXPECT_EQ(history().front().by, QStringLiteral("Ada Thorn"));

    // On this machine the name is taken again, for any book.
    ASSERT_TRUE(window->openBook(book.path()));
    EXPECT_EQ(window->desk()->author(), QStringLiteral("Ada Thorn"));
    EXPECT_FALSE(asks->isVisible());
    ASSERT_TRUE(window->makeBook(folder.filePath("three.yardwright")));
    EXPECT_EQ(asks->edit()->text(), QStringLiteral("Ada Thorn"));
}

} // namespace
