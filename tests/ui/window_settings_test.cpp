#include "tests/ui/open_window.h"

#include "core/model/setting_table.h"
#include "ui/settings/setting_editor.h"
#include "ui/settings/setting_groups.h"
#include "ui/settings/setting_line.h"
#include "ui/settings/settings_dialog.h"
#include "ui/settings/settings_page.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>

#include <set>

namespace {

using ui::settings::SettingLine;

struct SettingsOf : tests::OpenWindow {
    ui::settings::SettingsDialog* dialog = nullptr;

    void SetUp() override {
        OpenWindow::SetUp();
        QTest::keyClick(window.get(), Qt::Key_Comma, Qt::ControlModifier);
        dialog = window->findChild<ui::settings::SettingsDialog*>();
        ASSERT_NE(dialog, nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog));
        dialog->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(dialog));
    }
    /// Found by typing its name, as people would.
    SettingLine* line(const char* name) const {
        dialog->search()->setFocus();
        dialog->search()->selectAll();
        QTest::keyClicks(dialog->search(), QLatin1StringView(name));
        QApplication::processEvents(); // what was found is laid out
        return dialog->settings()->line(QLatin1StringView(name));
    }
    template <class T> static T* in(const SettingLine* line) { return line->findChild<T*>(); }
    static void typeInto(QLineEdit* edit, const char* text) {
        QTest::mouseClick(edit, Qt::LeftButton);
        edit->selectAll();
        QTest::keyClicks(edit, QLatin1StringView(text));
    }
    static void type(const SettingLine* line, const char* text, Qt::Key last = Qt::Key_Return) {
        typeInto(in<QLineEdit>(line), text);
        QTest::keyClick(in<QLineEdit>(line), last);
    }
    QString kept(const char* name) const {
        const auto reader = core::edit::Session::open(book.path(), book.clock(), core::edit::Session::Access::ReadOnly);
        return core::settingText(reader->settings(), QString::fromLatin1(name));
    }
};

TEST_F(SettingsOf, EverySettingStandsInOneGroupWithAPlainName) {
    std::set<QString> seen;
    for (const auto& group : ui::settings::settingGroups())
        for (const QString& name : group.names) EXPECT_TRUE(seen.insert(name).second) << name.toStdString();
    for (const core::SettingInfo& info : core::settingTable()) {
        EXPECT_TRUE(seen.contains(info.name)) << info.name.toStdString();
        EXPECT_NE(ui::settings::settingTitle(info.name), info.name);
        const SettingLine* line = dialog->settings()->line(info.name);
        ASSERT_NE(line, nullptr) << info.name.toStdString();
        QString words;
        for (const QLabel* label : line->findChildren<QLabel*>()) words += label->text() + u'\n';
        EXPECT_TRUE(words.contains(info.meaning)) << words.toStdString();
        EXPECT_TRUE(words.contains(info.source.toHtmlEscaped())) << words.toStdString();
        EXPECT_TRUE(words.contains(QStringLiteral("Default "))) << words.toStdString();
        EXPECT_EQ(words.contains(QStringLiteral("<i>assumption")),
                  info.source.startsWith(QStringLiteral("assumption")));
        EXPECT_EQ(line->editor()->typed(), info.defaultValue) << info.name.toStdString();
    }
    EXPECT_EQ(seen.size(), core::settingTable().size());
}

TEST_F(SettingsOf, ANumberIsSavedByEnterAndUndoneAtOnce) {
    const SettingLine* age = line("strength.max_age_days");
    type(age, "21");
    EXPECT_EQ(kept("strength.max_age_days"), QStringLiteral("21"));
    EXPECT_TRUE(age->backButton()->isVisible());
    EXPECT_TRUE(window->saying().endsWith(QStringLiteral(" · saved"))) << said();
    QTest::keyClick(in<QLineEdit>(age), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(kept("strength.max_age_days"), QStringLiteral("30"));
    EXPECT_EQ(in<QLineEdit>(age)->text(), QStringLiteral("30"));
    EXPECT_FALSE(age->backButton()->isVisible());
    QTest::keyClick(dialog, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(in<QLineEdit>(age)->text(), QStringLiteral("21"));
}

TEST_F(SettingsOf, LeavingTheFieldSavesToo) {
    const qsizetype lines = static_cast<qsizetype>(book.history().size());
    const SettingLine* drift = line("move.drift_m");
    type(drift, "4,5", Qt::Key_Tab);
    EXPECT_EQ(kept("move.drift_m"), QStringLiteral("4.5"));
    EXPECT_EQ(static_cast<qsizetype>(book.history().size()), lines + 1);
}

// The lax side of every hold's limit, one past its default, and well past it.
TEST_F(SettingsOf, NoHoldGetsLaxerByTyping) {
    int holds = 0;
    for (const core::SettingField& field : core::settingFields()) {
        if (!field.onlyStricter) continue;
        ++holds;
        const SettingLine* hold = line(field.name);
        const int start = core::settingText(core::Settings{}, QString::fromLatin1(field.name)).toInt();
        const int laxer = start == field.least ? start - 1 : start + 1;
        const std::string typed = std::to_string(laxer);
        type(hold, typed.c_str());
        EXPECT_TRUE(hold->problem().contains(QStringLiteral("a hold is never made laxer by a setting")))
            << field.name << ": " << hold->problem().toStdString();
        EXPECT_EQ(in<QLineEdit>(hold)->text().toStdString(), typed);
        EXPECT_EQ(kept(field.name).toInt(), start);
        QTest::keyClick(in<QLineEdit>(hold), Qt::Key_Escape);
        EXPECT_EQ(in<QLineEdit>(hold)->text().toInt(), start);
        EXPECT_TRUE(hold->problem().isEmpty());
    }
    EXPECT_EQ(holds, 14);
    EXPECT_TRUE(dialog->isVisible());
}

TEST_F(SettingsOf, AStricterHoldIsSavedAndGoesBackOnlyAsACorrection) {
    const SettingLine* hold = line("check.max_age_days");
    type(hold, "100");
    if (kept("check.max_age_days") != QStringLiteral("100")) {
        EXPECT_TRUE(dialogs.errors.isEmpty());
        FAIL() << hold->problem().toStdString();
    }
    QTest::mouseClick(hold->backButton(), Qt::LeftButton);
    EXPECT_EQ(kept("check.max_age_days"), QStringLiteral("150"));
    EXPECT_EQ(in<QLineEdit>(hold)->text(), QStringLiteral("150"));
}

TEST_F(SettingsOf, WhatIsRefusedStaysTypedWithItsSentence) {
    const SettingLine* mites = line("mites.fall");
    type(mites, "three");
    EXPECT_EQ(mites->problem(), QStringLiteral("Expected a number, 0 to 100."));
    EXPECT_EQ(in<QLineEdit>(mites)->text(), QStringLiteral("three"));
    EXPECT_EQ(kept("mites.fall"), QStringLiteral("3"));
    // Another edit meanwhile: still typed.
    type(line("mites.spring"), "1.5");
    EXPECT_EQ(in<QLineEdit>(mites)->text(), QStringLiteral("three"));
    EXPECT_FALSE(mites->problem().isEmpty());
}

TEST_F(SettingsOf, ADayAChoiceAndATableByKeys) {
    const SettingLine* start = line("season.fall_start");
    auto* day = in<QDateEdit>(start);
    day->setFocus();
    day->setSelectedSection(QDateTimeEdit::DaySection);
    QTest::keyClick(day, Qt::Key_Up);
    QTest::keyClick(day, Qt::Key_Return);
    EXPECT_EQ(kept("season.fall_start"), QStringLiteral("08-21"));

    const SettingLine* order = line("order");
    QTest::keyClick(in<QComboBox>(order), Qt::Key_Down);
    EXPECT_EQ(kept("order"), QStringLiteral("weaker-on-top"));

    const SettingLine* table = line("value.winter");
    const auto numbers = table->findChildren<QLineEdit*>();
    ASSERT_EQ(numbers.size(), 13);
    const qsizetype lines = static_cast<qsizetype>(book.history().size());
    typeInto(numbers[1], "60");
    QTest::keyClick(numbers[1], Qt::Key_Tab);
    QTest::keyClicks(numbers[2], QStringLiteral("130"));
    QTest::keyClick(numbers[2], Qt::Key_Return);
    EXPECT_EQ(table->problem(), QString());
    EXPECT_EQ(kept("value.winter"), QStringLiteral("0 60 130 300 480 640 750 820 880 905 920 928 934"));
    EXPECT_EQ(static_cast<qsizetype>(book.history().size()), lines + 1);
    typeInto(numbers[3], "1001");
    QTest::keyClick(numbers[3], Qt::Key_Return);
    EXPECT_FALSE(table->problem().isEmpty());
}

TEST_F(SettingsOf, UnitsShownReachThePlanAndTheVisitForm) {
    auto* weight = in<QComboBox>(line("show.weight"));
    QTest::keyClick(weight, Qt::Key_Down);
    EXPECT_EQ(kept("show.weight"), QStringLiteral("lb"));
    QTest::keyClick(in<QComboBox>(line("show.length")), Qt::Key_Down);
    EXPECT_EQ(plan()->scene().units.length, core::LengthUnit::Feet);
    EXPECT_EQ(plan()->scene().units.weight, core::WeightUnit::Pounds);
    const SettingLine* ready = line("stores.single_kg"); // kept in kg, said in pounds beside it: 32 kg are 70.5 lb
    bool beside = false;
    for (const QLabel* label : ready->findChildren<QLabel*>()) beside |= label->text() == QStringLiteral("= 70.5 lb");
    EXPECT_TRUE(beside);
}

TEST_F(SettingsOf, TheSearchFindsByWordsOfTheMeaning) {
    dialog->search()->setFocus();
    QTest::keyClicks(dialog->search(), QStringLiteral("foragers drift"));
    int shown = 0;
    for (const core::SettingInfo& info : core::settingTable())
        shown += dialog->settings()->line(info.name)->isVisible() ? 1 : 0;
    EXPECT_EQ(shown, 1);
    EXPECT_TRUE(dialog->settings()->line(QStringLiteral("move.drift_m"))->isVisible());
    dialog->list()->setFocus();
    QTest::keyClick(dialog->list(), Qt::Key_Down);
    EXPECT_TRUE(dialog->settings()->line(QStringLiteral("trace.days"))->isVisible());
    EXPECT_FALSE(dialog->settings()->line(QStringLiteral("move.drift_m"))->isVisible());
    EXPECT_TRUE(dialog->search()->text().isEmpty());
}

TEST_F(SettingsOf, EveryFocusableWidgetHasANameAndEscapeCloses) {
    for (const QWidget* w : dialog->findChildren<QWidget*>()) {
        if (!(w->focusPolicy() & Qt::TabFocus) || qobject_cast<const QScrollBar*>(w)) continue;
        const auto* button = qobject_cast<const QAbstractButton*>(w);
        const bool inner =
            w->parentWidget() &&
            (w->parentWidget()->inherits("QAbstractSpinBox") || w->parentWidget()->inherits("QComboBox") ||
             w->inherits("QComboBoxListView") || w->objectName().startsWith(QStringLiteral("qt_")));
        EXPECT_TRUE(!w->accessibleName().isEmpty() || (button && !button->text().isEmpty()) || inner)
            << w->metaObject()->className() << ' ' << w->objectName().toStdString();
    }
    QTest::keyClick(dialog->search(), Qt::Key_Escape);
    EXPECT_FALSE(dialog->isVisible());
}

} // namespace
