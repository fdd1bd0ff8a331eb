#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "ui/survey/survey_desk.h"
#include "ui/window/commands.h"
#include "ui/window/yard_commands.h"

#include <QAction>
#include <QFile>
#include <QLineEdit>
#include <QMenu>
#include <QProcess>
#include <QToolButton>

namespace {

using core::MmPoint;
using ui::survey::ToolKind;

struct Surveying : tests::OpenWindow {
    void SetUp() override {
        OpenWindow::SetUp();
        QTest::keyClick(window.get(), Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
        ASSERT_TRUE(survey()->on()) << said();
        m_lines = book.history().size();
    }
    ui::survey::SurveyDesk* survey() const { return window->page()->survey(); }
    QAction* command() const { return window->commands()->yards()->survey; }
    /// Lines of the history since the survey began.
    size_t lines() const { return book.history().size() - m_lines; }
    std::string last() const { return book.history().front().toStdString(); }
    void click(MmPoint where, Qt::KeyboardModifiers with = {}) const {
        QTest::mouseClick(plan(), Qt::LeftButton, with, ground(where));
    }
    void carryA1(MmPoint to) const {
        const core::ColonyId a1 = book.idOf(QStringLiteral("A1"));
        window->desk()->save(QStringLiteral("Carry"), [&](const core::edit::EditContext& c) {
            return core::edit::carryHive(c, a1, to, window->desk()->day());
        });
    }
    void press(const char* button) const {
        auto* b = survey()->band()->findChild<QToolButton*>(QLatin1StringView(button));
        ASSERT_NE(b, nullptr) << button;
        QTest::mouseClick(b, Qt::LeftButton);
    }
    /// An entry of the menu of a button, without opening it: an open menu would wait for the test.
    void pressMenu(const char* button, int entry) const {
        auto* b = survey()->band()->findChild<QToolButton*>(QLatin1StringView(button));
        ASSERT_NE(b, nullptr) << button;
        b->menu()->actions().at(entry)->trigger();
    }
    void key(Qt::Key k, Qt::KeyboardModifiers with = {}) const { QTest::keyClick(plan(), k, with); }
    void undo() const { QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier); }
    MmPoint placeOf(const char* label) const { return book.placeOf(QLatin1StringView(label)); }
    std::vector<core::FixedThing> fixed() const {
        const auto& session = window->desk()->session();
        return session.fixedThingsOf(*window->desk()->yard());
    }
    int headingOf(const char* label) const {
        const auto hive = plan()->scene().find(book.idOf(QLatin1StringView(label)));
        return plan()->scene().hives.at(hive.value()).headingDeg;
    }
    size_t stays(const char* label) const {
        return window->desk()->session().placementsOf(book.idOf(QLatin1StringView(label))).size();
    }
    void drawHedge() const {
        pressMenu("surveyDraw", 0);
        click({1000, 4000});
        click({6000, 4500});
        key(Qt::Key_Return);
    }

private:
    size_t m_lines = 0;
};

TEST_F(Surveying, IsEnteredAndLeftByItsCommandAndByEscape) {
    EXPECT_TRUE(command()->isChecked());
    EXPECT_TRUE(survey()->band()->isVisible());
    key(Qt::Key_Escape);
    EXPECT_FALSE(survey()->on());
    EXPECT_FALSE(command()->isChecked());
    EXPECT_FALSE(survey()->band()->isVisible());
    EXPECT_EQ(plan()->tool(), nullptr);
    command()->trigger();
    EXPECT_TRUE(survey()->on());
    press("surveyDone");
    EXPECT_FALSE(survey()->on());
    EXPECT_EQ(lines(), 0u);
}

TEST_F(Surveying, ADraggedStandIsPutRightAndNoHiveIsCarried) {
    drag(at("A5"), ground({8000, 1500}));
    EXPECT_EQ(placeOf("A5"), (MmPoint{8000, 1500})) << said();
    EXPECT_EQ(stays("A5"), 1u) << "it was never carried";
    EXPECT_EQ(last(), "Corrected the drawing of Kiln Field: moved stand 5 by 1.5 m");
    EXPECT_EQ(lines(), 1u);
    undo();
    EXPECT_EQ(placeOf("A5"), (MmPoint{8000, 0}));
    EXPECT_TRUE(survey()->on()) << "an undo does not end it";
}

TEST_F(Surveying, ASecondProcessReadsWhereTheStandIsAndWhatIsDrawn) {
    drag(at("A5"), ground({8000, 1500}));
    drawHedge();
    QTemporaryDir out;
    QProcess other;
    other.start(QStringLiteral(YW_PROGRAM),
                {QStringLiteral("export"), book.path(), QStringLiteral("--to"), out.path()});
    ASSERT_TRUE(other.waitForFinished());
    ASSERT_EQ(other.exitCode(), 0) << other.readAllStandardError().toStdString();
    QFile colonies(out.filePath(QStringLiteral("colonies.csv")));
    ASSERT_TRUE(colonies.open(QIODevice::ReadOnly));
    EXPECT_TRUE(colonies.readAll().contains("A5,Kiln Field,5,8,1.5,180,"));
    QFile placements(out.filePath(QStringLiteral("placements.csv")));
    ASSERT_TRUE(placements.open(QIODevice::ReadOnly));
    EXPECT_EQ(placements.readAll().count('\n'), 1) << "the header alone: no carry";
    QFile things(out.filePath(QStringLiteral("fixed_things.csv")));
    ASSERT_TRUE(things.open(QIODevice::ReadOnly));
    EXPECT_EQ(things.readAll(), "yard,kind,name,points_m,radius_m\nKiln Field,hedge,,1 4; 6 4.5,\n");
}

TEST_F(Surveying, SeveralSelectedAreMovedTogether) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A2"));
    QTest::mouseClick(plan(), Qt::LeftButton, Qt::ControlModifier, at("A3"));
    drag(at("A3"), ground({4000, 1200}));
    EXPECT_EQ(placeOf("A2"), (MmPoint{2000, 1200})) << said();
    EXPECT_EQ(placeOf("A3"), (MmPoint{4000, 1200}));
    EXPECT_EQ(last(), "Corrected the drawing of Kiln Field: moved 2 stands");
    undo();
    EXPECT_EQ(placeOf("A2"), (MmPoint{2000, 0}));
}

TEST_F(Surveying, ABurstOfArrowKeysIsOneEdit) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A6"));
    for (int i = 0; i < 3; ++i) key(Qt::Key_Right);
    key(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(lines(), 0u) << "not before the burst ends";
    key(Qt::Key_Return);
    EXPECT_EQ(lines(), 1u);
    EXPECT_EQ(placeOf("A6"), (MmPoint{10300, 10})) << said();
    key(Qt::Key_Left);
    EXPECT_TRUE(QTest::qWaitFor([&] { return lines() == 2; }, 3000)) << "a burst ends by itself";
}

TEST_F(Surveying, AMoveIsGivenUpByEscapeAndByLosingTheFocus) {
    drag(at("A5"), ground({8000, 1500}), false);
    EXPECT_NE(said().find("A5: 1.5 m north, in the drawing."), std::string::npos) << said();
    key(Qt::Key_Escape);
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({8000, 1500}));
    EXPECT_EQ(placeOf("A5"), (MmPoint{8000, 0}));
    EXPECT_TRUE(survey()->on());
    drag(at("A5"), ground({8000, 1500}), false);
    plan()->clearFocus();
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({8000, 1500}));
    EXPECT_EQ(placeOf("A5"), (MmPoint{8000, 0}));
    EXPECT_EQ(lines(), 0u);
}

TEST_F(Surveying, StandsAreNotDrawnIntoEachOther) {
    drag(at("A5"), ground({6000, 0}));
    EXPECT_EQ(lines(), 0u);
    EXPECT_EQ(placeOf("A5"), (MmPoint{8000, 0}));
    EXPECT_NE(said().find("stands are at least 0.3 m apart"), std::string::npos) << said();
}

TEST_F(Surveying, WhatIsUnderWayIsGivenUpWhenTheBookChanges) {
    drag(at("A5"), ground({8000, 1500}), false);
    carryA1({0, -1500});
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({8000, 1500}));
    EXPECT_EQ(placeOf("A5"), (MmPoint{8000, 0}));
    EXPECT_EQ(lines(), 1u) << "the carry alone";
}

TEST_F(Surveying, AnEmptyStandIsMovedByMouseAndByKeys) {
    carryA1({0, -2500});
    drag(ground({0, 0}), ground({0, 1000}));
    const auto standAt = [&](MmPoint where) {
        for (const core::Stand& s : window->desk()->session().standsOf(*window->desk()->yard()))
            if (s.at == where && s.name == QStringLiteral("1")) return true;
        return false;
    };
    EXPECT_TRUE(standAt({0, 1000})) << said();
    key(Qt::Key_Escape);
    key(Qt::Key_PageDown);
    EXPECT_EQ(said(), "Stand 1, empty: arrow keys move it.");
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    EXPECT_TRUE(standAt({100, 1000})) << said();
    EXPECT_EQ(placeOf("A1"), (MmPoint{0, -2500})) << "the hive stays where it was carried";
}

TEST_F(Surveying, AHiveIsTurnedByDraggingAroundIt) {
    press("surveyTurn");
    drag(at("A2"), at("A2") + QPoint(80, 0));
    EXPECT_EQ(headingOf("A2"), 90) << said();
    EXPECT_EQ(last(), "Corrected the drawing of Kiln Field: A2 faces 90°");
    EXPECT_EQ(stays("A2"), 1u);
    undo();
    EXPECT_EQ(headingOf("A2"), 180);
    drag(at("A2"), at("A2") + QPoint(80, 0), false);
    key(Qt::Key_Escape);
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, at("A2") + QPoint(80, 0));
    EXPECT_EQ(headingOf("A2"), 180);
}

TEST_F(Surveying, HivesAreTurnedByKeys) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A2"));
    QTest::mouseClick(plan(), Qt::LeftButton, Qt::ControlModifier, at("A3"));
    press("surveyTurn");
    key(Qt::Key_BracketRight);
    key(Qt::Key_BracketRight);
    key(Qt::Key_BracketLeft, Qt::ShiftModifier);
    EXPECT_EQ(lines(), 0u);
    key(Qt::Key_Return);
    EXPECT_EQ(headingOf("A2"), 209) << said();
    EXPECT_EQ(headingOf("A3"), 209);
    EXPECT_EQ(lines(), 1u);
    undo();
    EXPECT_EQ(headingOf("A3"), 180);
}

TEST_F(Surveying, SelectedStandsAreAlignedOnceItWasSeen) {
    drag(at("A2"), ground({2000, 600}));
    for (const char* label : {"A1", "A3"}) // A2 is chosen
        QTest::mouseClick(plan(), Qt::LeftButton, Qt::ControlModifier, at(label));
    pressMenu("surveyAlign", 0);
    EXPECT_EQ(said(), "Stands that would move: 3, by 0.4 m at most. Enter does it, Escape does not.");
    key(Qt::Key_Escape);
    EXPECT_EQ(lines(), 1u);
    pressMenu("surveyAlign", 0);
    key(Qt::Key_Return);
    EXPECT_EQ(lines(), 2u);
    for (const char* label : {"A1", "A2", "A3"}) EXPECT_EQ(placeOf(label).y, 200) << label; // own calculation: 600 / 3
    undo();
    EXPECT_EQ(placeOf("A2"), (MmPoint{2000, 600}));
}

TEST_F(Surveying, AlignDistributeAndRowsNeedEnoughOfThem) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A2"));
    pressMenu("surveyAlign", 3);
    EXPECT_EQ(said(), "Select 3 or more hives or stands first: Ctrl and a click adds one.");
    QTest::mouseClick(plan(), Qt::LeftButton, Qt::ControlModifier, at("A3"));
    QTest::mouseClick(plan(), Qt::LeftButton, Qt::ControlModifier, at("A4"));
    pressMenu("surveyAlign", 4);
    EXPECT_EQ(said(), "They stand so already.");
    EXPECT_EQ(lines(), 0u);
}

TEST_F(Surveying, TwoPointsAreMeasuredAndNothingIsWritten) {
    press("surveyMeasure");
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A1"));
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A4"));
    EXPECT_EQ(said(), "Measured: 6.0 m east.");
    key(Qt::Key_Escape);
    EXPECT_TRUE(survey()->on()) << "that ends the measuring alone";
    key(Qt::Key_Return); // from the gate, by the keys
    for (int i = 0; i < 5; ++i) key(Qt::Key_Up);
    key(Qt::Key_Return);
    EXPECT_EQ(said(), "Measured: 0.5 m north.");
    EXPECT_EQ(lines(), 0u);
}

TEST_F(Surveying, TheGateIsPutByClickAndByKeys) {
    press("surveyGate");
    click({3000, -2000});
    EXPECT_EQ(window->desk()->session().yard(*window->desk()->yard())->gate(), (MmPoint{3000, -2000})) << said();
    key(Qt::Key_Left);
    key(Qt::Key_Return);
    EXPECT_EQ(window->desk()->session().yard(*window->desk()->yard())->gate(), (MmPoint{2900, -2000})) << said();
    EXPECT_EQ(lines(), 2u);
    undo();
    undo();
    EXPECT_EQ(window->desk()->session().yard(*window->desk()->yard())->gate(), MmPoint{});
}

TEST_F(Surveying, AFixedThingIsDrawnByClicksAndCancelledByEscape) {
    drawHedge();
    ASSERT_EQ(fixed().size(), 1u) << said();
    EXPECT_EQ(fixed().front().points, (std::vector<MmPoint>{{1000, 4000}, {6000, 4500}}));
    EXPECT_EQ(plan()->scene().fixed.size(), 1u);
    click({1000, 2000});
    key(Qt::Key_Escape);
    key(Qt::Key_Return);
    EXPECT_EQ(fixed().size(), 1u);
    undo();
    EXPECT_TRUE(fixed().empty());
    EXPECT_TRUE(plan()->scene().fixed.empty());
}

TEST_F(Surveying, ADoubleClickEndsALine) {
    pressMenu("surveyDraw", 1);
    click({1000, 2000});
    click({5000, 2000});
    click({5000, 4000});
    QTest::mouseDClick(plan(), Qt::LeftButton, {}, ground({5000, 4000})); // the second press alone
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({5000, 4000}));
    ASSERT_EQ(fixed().size(), 1u) << said();
    EXPECT_EQ(fixed().front().kind, core::FixedKind::Fence);
    EXPECT_EQ(fixed().front().points.size(), 3u);
}

TEST_F(Surveying, ShedsAndTreesEndByThemselves) {
    pressMenu("surveyDraw", 4);
    click({1000, 2000});
    click({4000, 2000});
    click({2000, 4000});
    ASSERT_EQ(fixed().size(), 1u) << said();
    EXPECT_EQ(fixed().front().points, (std::vector<MmPoint>{{1000, 2000}, {4000, 2000}, {4000, 4000}, {1000, 4000}}));
    pressMenu("surveyDraw", 5);
    click({7000, 3000});
    click({7000, 4500});
    ASSERT_EQ(fixed().size(), 2u) << said();
    EXPECT_EQ(fixed().back().radius, core::Millimetres{1500});
}

TEST_F(Surveying, AFixedThingIsDrawnByKeysAlone) {
    pressMenu("surveyDraw", 3);
    key(Qt::Key_Up);
    key(Qt::Key_Return);
    for (int i = 0; i < 10; ++i) key(Qt::Key_Up);
    key(Qt::Key_Return);
    for (int i = 0; i < 10; ++i) key(Qt::Key_Right);
    key(Qt::Key_Return);
    key(Qt::Key_Return); // once more where it is: ended
    ASSERT_EQ(fixed().size(), 1u) << said();
    EXPECT_EQ(fixed().front().points, (std::vector<MmPoint>{{0, 100}, {0, 1100}, {1000, 1100}}));
}

TEST_F(Surveying, TooFewPointsAreRefusedAndStayDrawn) {
    pressMenu("surveyDraw", 3);
    click({1000, 2000});
    click({5000, 2000});
    key(Qt::Key_Return);
    EXPECT_EQ(said(), "The water needs at least 3 points, found 2.");
    click({5000, 4000});
    key(Qt::Key_Return);
    EXPECT_EQ(fixed().size(), 1u);
}

TEST_F(Surveying, AFixedThingIsMovedShapedNamedAndTakenBack) {
    drawHedge();
    key(Qt::Key_Escape); // back to Move
    drag(ground({3500, 4250}), ground({3500, 3250}));
    EXPECT_EQ(fixed().front().points, (std::vector<MmPoint>{{1000, 3000}, {6000, 3500}})) << said();
    drag(ground({6000, 3500}), ground({6000, 4000}));
    EXPECT_EQ(fixed().front().points, (std::vector<MmPoint>{{1000, 3000}, {6000, 4000}})) << said();
    auto* name = survey()->band()->nameEdit();
    ASSERT_TRUE(name->isVisible());
    QTest::mouseClick(name, Qt::LeftButton);
    QTest::keyClicks(name, QStringLiteral("old hedge"));
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(fixed().front().name, QStringLiteral("old hedge"));
    EXPECT_EQ(plan()->scene().fixed.front().word, QStringLiteral("old hedge"));
    EXPECT_TRUE(plan()->hasFocus());
    key(Qt::Key_Delete);
    EXPECT_TRUE(fixed().empty()) << said();
    EXPECT_FALSE(name->isVisible());
    undo();
    EXPECT_EQ(fixed().size(), 1u);
}

TEST_F(Surveying, AFixedThingAndItsPointsAreReachedByKeys) {
    drawHedge();
    key(Qt::Key_Escape);
    key(Qt::Key_PageDown);
    EXPECT_EQ(said(), "hedge: arrow keys move it, End goes through its points, Delete takes it back.");
    key(Qt::Key_End);
    EXPECT_EQ(said(), "hedge, point 1 of 2.");
    key(Qt::Key_Down);
    key(Qt::Key_Return);
    EXPECT_EQ(fixed().front().points, (std::vector<MmPoint>{{1000, 3900}, {6000, 4500}})) << said();
}

TEST_F(Surveying, EndsWhenAnotherPlaceIsShownOrSomethingIsSetDown) {
    window->setPlace(ui::window::Place::MergeDay);
    EXPECT_FALSE(survey()->on());
    EXPECT_FALSE(command()->isChecked());
    window->setPlace(ui::window::Place::YardPlan);
    command()->trigger();
    EXPECT_TRUE(survey()->on());
    window->commands()->yards()->placeHives->trigger();
    EXPECT_FALSE(survey()->on());
    command()->trigger();
    EXPECT_FALSE(survey()->on()) << "a hive is being set down";
    EXPECT_FALSE(command()->isChecked());
}

TEST_F(Surveying, EveryButtonHasANameAndIsReachedByTab) {
    for (const QToolButton* b : survey()->band()->findChildren<QToolButton*>()) {
        EXPECT_FALSE(b->accessibleName().isEmpty());
        EXPECT_EQ(b->focusPolicy(), Qt::StrongFocus) << b->accessibleName().toStdString();
        EXPECT_FALSE(QKeySequence::mnemonic(b->text()).isEmpty()) << b->accessibleName().toStdString();
    }
}

} // namespace
