#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "ui/form/form_panel.h"
#include "ui/settings/box_kinds_page.h"
#include "ui/settings/settings_dialog.h"
#include "ui/window/commands.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>

namespace {

struct BoxKinds : tests::OpenWindow {
    ui::settings::SettingsDialog* dialog = nullptr;
    ui::settings::BoxKindsPage* page = nullptr;

    void SetUp() override {
        OpenWindow::SetUp();
        window->commands()->settings->trigger();
        dialog = window->findChild<ui::settings::SettingsDialog*>();
        ASSERT_NE(dialog, nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog));
        page = dialog->findChild<ui::settings::BoxKindsPage*>();
        dialog->showPage(page);
        dialog->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(dialog));
        ASSERT_TRUE(page->isVisible());
    }
    QLineEdit* field(const char* key) const {
        return page->panel()->findChild<QLineEdit*>(QStringLiteral("field.") + QLatin1StringView(key));
    }
    void type(const char* key, const char* text) const {
        field(key)->selectAll();
        QTest::keyClicks(field(key), QLatin1StringView(text));
    }
    std::optional<core::BoxKind> kind(const char* name) const {
        for (const core::BoxKind& k : window->desk()->session().boxKinds())
            if (k.name == QLatin1StringView(name)) return k;
        return std::nullopt;
    }
    bool choose(const char* name) const {
        for (int row = 0; row < page->table()->rowCount(); ++row)
            if (page->table()->item(row, 0)->text() == QLatin1StringView(name)) {
                page->table()->setCurrentCell(row, 0);
                return true;
            }
        return false;
    }
    void addNine() const {
        QTest::mouseClick(page->newButton(), Qt::LeftButton);
        QApplication::processEvents();
        type("name", "Deep of 9");
        type("frames", "9");
        type("width", "375");
        type("tare", "6,25");
        QTest::keyClick(field("tare"), Qt::Key_Return);
    }
};

TEST_F(BoxKinds, OneOfTheirOwnIsAddedChangedAndTakenBack) {
    addNine();
    ASSERT_TRUE(kind("Deep of 9"));
    EXPECT_EQ(kind("Deep of 9")->frames, 9);
    EXPECT_EQ(kind("Deep of 9")->widthMm, 375);
    EXPECT_EQ(kind("Deep of 9")->tare, core::Decagrams{625});
    EXPECT_FALSE(kind("Deep of 9")->heightMm);
    EXPECT_FALSE(page->panel()->isVisible());

    ASSERT_TRUE(choose("Deep of 9"));
    QTest::mouseClick(page->changeButton(), Qt::LeftButton);
    QApplication::processEvents();
    EXPECT_EQ(field("tare")->text(), QStringLiteral("6.25"));
    type("height", "240");
    QTest::keyClick(field("height"), Qt::Key_Return);
    EXPECT_EQ(kind("Deep of 9")->heightMm, 240);
    EXPECT_EQ(kind("Deep of 9")->tare, core::Decagrams{625});

    QTest::mouseClick(page->takeBackButton(), Qt::LeftButton);
    EXPECT_FALSE(kind("Deep of 9"));
    window->undo();
    EXPECT_TRUE(kind("Deep of 9"));
    EXPECT_TRUE(choose("Deep of 9"));
}

TEST_F(BoxKinds, WhatCannotBeIsSaidAtItsFieldAndStaysTyped) {
    QTest::mouseClick(page->newButton(), Qt::LeftButton);
    QApplication::processEvents();
    type("name", "Half");
    type("frames", "25");
    QTest::keyClick(field("frames"), Qt::Key_Return);
    EXPECT_TRUE(page->panel()->isVisible());
    EXPECT_EQ(page->panel()->findChild<QLabel*>(QStringLiteral("problem.frames"))->text(),
              QStringLiteral("A whole number, 1 to 24."));
    type("frames", "5");
    type("tare", "101");
    QTest::keyClick(field("tare"), Qt::Key_Return);
    EXPECT_FALSE(kind("Half"));
    EXPECT_EQ(field("tare")->text(), QStringLiteral("101"));
}

TEST_F(BoxKinds, OneWithColoniesAndOneThatCameWithTheBookStay) {
    ASSERT_TRUE(choose("langstroth-10"));
    QTest::mouseClick(page->takeBackButton(), Qt::LeftButton);
    EXPECT_TRUE(kind("langstroth-10"));
    EXPECT_FALSE(page->problem().isEmpty());
}

// 6.25 kg are 13.779 lb, shown as 13.8: own calculation, divided by 0.45359237.
TEST_F(BoxKinds, TheEmptyWeightIsTypedInTheUnitShownAndKeptWhereItIsNotTouched) {
    addNine();
    window->desk()->save(QStringLiteral("units"), [](const core::edit::EditContext& c) {
        return core::edit::setSetting(c, QStringLiteral("show.weight"), QStringLiteral("lb"));
    });
    ASSERT_TRUE(choose("Deep of 9"));
    EXPECT_EQ(page->table()->item(page->table()->currentRow(), 5)->text(), QStringLiteral("13.8"));
    QTest::mouseClick(page->changeButton(), Qt::LeftButton);
    QApplication::processEvents();
    EXPECT_EQ(field("tare")->text(), QStringLiteral("13.8"));
    type("length", "500");
    QTest::keyClick(field("length"), Qt::Key_Return);
    EXPECT_EQ(kind("Deep of 9")->lengthMm, 500);
    EXPECT_EQ(kind("Deep of 9")->tare, core::Decagrams{625});
}

} // namespace
