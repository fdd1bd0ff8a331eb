#include "tests/ui/open_window.h"

#include "ui/form/form_panel.h"
#include "ui/people/keeper_page.h"
#include "ui/settings/settings_dialog.h"
#include "ui/window/commands.h"

#include <QAction>
#include <QListWidget>
#include <QPushButton>

namespace {

using ui::people::KeeperPage;

/// The page of the keeper, reached by keys from the settings.
struct KeeperWindow : tests::OpenWindow {
    KeeperPage* page = nullptr;

    void openPage() {
        window->commands()->settings->trigger();
        auto* dialog = window->findChild<ui::settings::SettingsDialog*>();
        ASSERT_NE(dialog, nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog));
        dialog->activateWindow();
        page = dialog->findChild<KeeperPage*>();
        ASSERT_NE(page, nullptr);
        for (int i = 0; i < dialog->list()->count() && !page->isVisible(); ++i)
            QTest::keyClick(dialog->list(), Qt::Key_Down);
        ASSERT_TRUE(page->isVisible());
    }
    QWidget* field(const char* spoken) const {
        for (QWidget* w : page->panel()->findChildren<QWidget*>())
            if (w->accessibleName() == QLatin1StringView(spoken)) return w;
        return nullptr;
    }
    void type(const char* spoken, const char* text) const {
        QWidget* editor = field(spoken);
        ASSERT_NE(editor, nullptr) << spoken;
        editor->setFocus();
        QTest::keyClicks(editor, QString::fromUtf8(text));
    }
    std::optional<core::Keeper> kept() const { return window->desk()->session().keeper(); }
};

TEST_F(KeeperWindow, IsWrittenDownChangedTakenBackAndUndone) {
    openPage();
    EXPECT_EQ(page->shown(), QStringLiteral("No keeper is recorded yet."));
    EXPECT_FALSE(page->takeBackButton()->isEnabled());
    QTest::keyClick(page->changeButton(), Qt::Key_Space);
    type("Name of the keeper", "Ada Thorn");
    type("Registration number of the keeper or apiary", "AB 12");
    type("Country or state whose rules hold", "New Zealand");
    QTest::keyClick(field("Name of the keeper"), Qt::Key_Return);
    ASSERT_TRUE(kept()) << said();
    EXPECT_EQ(kept()->registration, QStringLiteral("AB 12"));
    EXPECT_EQ(kept()->place, QStringLiteral("New Zealand"));
    EXPECT_FALSE(page->panel()->isVisible());
    EXPECT_EQ(page->shown(), QStringLiteral("Ada Thorn\nRegistration: AB 12\nWhose rules hold: New Zealand"));
    QTest::keyClick(page->changeButton(), Qt::Key_Space);
    type("Telephone or mail of the keeper", "0000 1");
    QTest::keyClick(field("Name of the keeper"), Qt::Key_Return);
    EXPECT_EQ(kept()->contact, QStringLiteral("0000 1"));
    QTest::keyClick(page->takeBackButton(), Qt::Key_Space);
    EXPECT_FALSE(kept());
    window->undo();
    EXPECT_EQ(kept()->contact, QStringLiteral("0000 1"));
    window->undo();
    EXPECT_TRUE(kept()->contact.isEmpty());
}

TEST_F(KeeperWindow, WhatIsTypedStaysTypedWhereItCannotBe) {
    openPage();
    QTest::keyClick(page->changeButton(), Qt::Key_Space);
    type("Telephone or mail of the keeper", "0000 1");
    QTest::keyClick(field("Telephone or mail of the keeper"), Qt::Key_Return);
    EXPECT_FALSE(kept());
    EXPECT_TRUE(page->panel()->isVisible());
    EXPECT_TRUE(page->panel()->dirty());
    QTest::keyClick(page->changeButton(), Qt::Key_Space);
    EXPECT_FALSE(page->problem().isEmpty()) << "nothing typed is thrown away";
    type("Name of the keeper", "Ada");
    QTest::keyClick(field("Name of the keeper"), Qt::Key_Return);
    EXPECT_EQ(kept()->contact, QStringLiteral("0000 1"));
}

} // namespace
