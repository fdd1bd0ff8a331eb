#include "core/rules/facts.h"
#include "core/rules/hold.h"
#include "tests/ui/test_dialogs.h"
#include "tests/ui/time_book.h"
#include "ui/form/day_edit.h"
#include "ui/form/form_panel.h"
#include "ui/plan/plan_view.h"
#include "ui/time/time_desk.h"
#include "ui/visit/visit_form.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QTest>

namespace {

using core::dayOf;

const core::Day kToday = dayOf(2026, 9, 15);

/// The real window on a book with a past; the day is changed by mouse and keys alone.
struct WindowTime : ::testing::Test {
    tests::BookWithPast book;
    tests::TestDialogs dialogs;
    std::unique_ptr<ui::window::MainWindow> window;

    void SetUp() override {
        window = std::make_unique<ui::window::MainWindow>(book.clock(), dialogs);
        ASSERT_TRUE(window->openBook(book.path(), false));
        window->resize(1440, 900);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
        window->desk()->setYard(book.yard());
        time().setFluentMs(1e9); // whole readings, however slow the machine is just now
    }
    ui::desk::Desk& desk() const { return *window->desk(); }
    ui::time::TimeDesk& time() const { return *window->page()->time(); }
    ui::time::DateBar& bar() const { return *time().bar(); }
    ui::time::Strip& strip() const { return *bar().strip(); }
    ui::plan::PlanView& plan() const { return *window->page()->plan(); }
    std::string said() const { return window->saying().toStdString(); }

    QPoint at(core::Day day) const {
        return {static_cast<int>(std::lround(strip().scale().xOf(day))), strip().height() / 2 - 4};
    }
    void key(int code, Qt::KeyboardModifiers with = {}) const {
        strip().setFocus();
        QTest::keyClick(&strip(), static_cast<Qt::Key>(code), with);
    }
    void type(const QString& day) const {
        QTest::keyClick(window.get(), Qt::Key_D, Qt::ControlModifier);
        QTest::keyClicks(bar().field(), day);
        QTest::keyClick(bar().field(), Qt::Key_Return);
    }
    /// Label, place, line and holds of each hive drawn.
    static std::vector<std::string> linesOf(const ui::plan::Scene& scene) {
        std::vector<std::string> out;
        for (const ui::plan::HiveMark& h : scene.hives)
            out.push_back(h.label.toStdString() + " at " + std::to_string(h.at.x) + "," + std::to_string(h.at.y) + " " +
                          (h.bees ? std::to_string(h.bees->value) : "?") + " " + h.holdLetters.toStdString());
        return out;
    }
    /// The same, from the file and the rules.
    std::vector<std::string> expected(core::Day day) const {
        const core::Snapshot s = book.reader()->snapshot(day);
        const auto holds = core::rules::holds(s);
        std::vector<std::string> out;
        for (const core::rules::ColonyFacts& f : core::rules::colonyFacts(s)) {
            if (f.yard.value < 0 || s.yard(f.yard).id != book.yard()) continue;
            const core::SnapStay* stay = s.placeOf(f.colony);
            std::string line = s.colony(f.colony).shown.toStdString() + " at " + std::to_string(stay->at.x) + "," +
                               std::to_string(stay->at.y) + " " +
                               (f.strength ? std::to_string(f.strength->value) : "?") + " ";
            for (const auto& h : holds)
                if (h.colony == f.colony) line += QString(core::rules::holdLetter(h.kind)).toStdString();
            out.push_back(line);
        }
        return out;
    }
    void expectYardOf(core::Day day) const {
        EXPECT_EQ(linesOf(plan().scene()), expected(day)) << core::isoText(day).toStdString();
    }
    std::string exported(const char* file) const {
        QTemporaryDir out;
        QProcess other;
        other.start(QStringLiteral(YW_PROGRAM),
                    {QStringLiteral("export"), book.path(), QStringLiteral("--to"), out.path()});
        if (!other.waitForFinished() || other.exitCode() != 0) return other.readAllStandardError().toStdString();
        QFile read(out.filePath(QLatin1StringView(file)));
        return read.open(QIODevice::ReadOnly) ? read.readAll().toStdString() : std::string();
    }
};

TEST_F(WindowTime, ADragShowsTheYardOfEachDay) {
    const core::Day last = dayOf(2026, 5, 20);
    QTest::mousePress(&strip(), Qt::LeftButton, {}, at(kToday));
    for (core::Day day = kToday - 7; day > last; day = day - 7) {
        QTest::mouseMove(&strip(), at(day));
        ASSERT_TRUE(QTest::qWaitFor([&] { return desk().day() < day + 3 && desk().day() > day - 3; }));
        expectYardOf(desk().day());
        EXPECT_EQ(strip().day(), desk().day());
    }
    QTest::mouseRelease(&strip(), Qt::LeftButton, {}, at(last));
    EXPECT_EQ(plan().scene().hives.size(), 4u) << "B2 lives again";
    EXPECT_FALSE(time().veil()->isHidden());
    EXPECT_TRUE(time().veil()->text().contains(QStringLiteral("2026")));
}

TEST_F(WindowTime, WhereHivesStoodThenAndWhatHeldThem) {
    type(QStringLiteral("2 Jul 2026"));
    EXPECT_EQ(desk().day(), dayOf(2026, 7, 2));
    expectYardOf(dayOf(2026, 7, 2));
    EXPECT_EQ(plan().scene().hives.size(), 3u);
    key(Qt::Key_Right); // the sign of the 3rd holds them all
    for (const auto& hive : plan().scene().hives) EXPECT_TRUE(hive.held()) << hive.label.toStdString();
    expectYardOf(dayOf(2026, 7, 3));
    key(Qt::Key_Left, Qt::ShiftModifier);
    expectYardOf(dayOf(2026, 6, 26));
    const auto& stands = plan().scene().stands;
    ASSERT_EQ(stands.size(), 1u) << "B2's, since its union; B4's new one was not used yet";
    EXPECT_EQ(stands[0].at, (core::MmPoint{2000, 0}));
}

TEST_F(WindowTime, TheGlanceOfABigBookShowsTheSame) {
    time().setFluentMs(0);
    for (const core::Day day : {dayOf(2026, 7, 3), dayOf(2026, 6, 19), dayOf(2026, 6, 20), dayOf(2026, 9, 1)}) {
        QTest::mousePress(&strip(), Qt::LeftButton, {}, at(day));
        ASSERT_TRUE(QTest::qWaitFor([&] { return time().glancing(); }));
        const core::Day shown = strip().day();
        expectYardOf(shown);
        EXPECT_EQ(desk().day() == shown, false) << "the desk waits until the hand rests";
        QTest::mouseRelease(&strip(), Qt::LeftButton, {}, at(day));
        EXPECT_FALSE(time().glancing());
        EXPECT_EQ(desk().day(), shown);
        expectYardOf(shown);
    }
    key(Qt::Key_Left);
    EXPECT_TRUE(time().glancing());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !time().glancing(); }, 3000)) << "the hand rests";
    expectYardOf(strip().day());
}

TEST_F(WindowTime, TicksAreTheVisitsOfTheFile) {
    std::map<core::Day, int> visits;
    for (const char* label : {"B1", "B2", "B3", "B4"})
        for (const core::Visit& v : book.reader()->visitsOf(book.idOf(label), 100)) ++visits[v.day];
    std::map<core::Day, int> ticks;
    for (const core::RecordedDay& r : strip().records())
        if (r.what == core::Recorded::Visit) ticks[r.day] = r.count;
    EXPECT_EQ(ticks, visits);
    EXPECT_EQ(strip().spoken(dayOf(2026, 6, 3)).toStdString(), "3 Jun 2026: 3 visits");
    EXPECT_EQ(strip().spoken(dayOf(2026, 6, 20)).toStdString(), "20 Jun 2026: 1 union");
    EXPECT_EQ(strip().spoken(dayOf(2026, 7, 1)).toStdString(), "1 Jul 2026: 1 hive carried");
    EXPECT_EQ(strip().spoken(dayOf(2026, 5, 10)).toStdString(), "10 May 2026: 4 hives set up");
}

TEST_F(WindowTime, KeysGoThroughTheDays) {
    key(Qt::Key_Left);
    EXPECT_EQ(desk().day(), kToday - 1);
    key(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(desk().day(), dayOf(2026, 8, 20));
    EXPECT_NE(said().find("20 Aug 2026: 2 visits"), std::string::npos) << said();
    key(Qt::Key_PageDown);
    EXPECT_EQ(desk().day(), dayOf(2026, 7, 20));
    key(Qt::Key_PageUp);
    EXPECT_EQ(desk().day(), dayOf(2026, 8, 20));
    key(Qt::Key_Home);
    EXPECT_EQ(desk().day(), dayOf(2026, 5, 10));
    key(Qt::Key_Left);
    EXPECT_EQ(desk().day(), dayOf(2026, 5, 10)) << "nothing is recorded before";
    key(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(desk().day(), dayOf(2026, 6, 3));
    key(Qt::Key_End);
    EXPECT_EQ(desk().day(), kToday);
    EXPECT_TRUE(bar().todayButton()->isHidden());
    EXPECT_TRUE(time().veil()->isHidden());
}

TEST_F(WindowTime, ScreenReadersHearASlider) {
    type(QStringLiteral("3 Jun 2026"));
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&strip());
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->role(), QAccessible::Slider);
    EXPECT_EQ(spoken->text(QAccessible::Value).toStdString(), "3 Jun 2026: 3 visits");
    QAccessibleValueInterface* value = spoken->valueInterface();
    ASSERT_NE(value, nullptr);
    EXPECT_EQ(value->currentValue().toInt(), 24);
    EXPECT_EQ(value->maximumValue().toInt(), kToday - dayOf(2026, 5, 10));
    value->setCurrentValue(41);
    EXPECT_EQ(desk().day(), dayOf(2026, 6, 20));
}

TEST_F(WindowTime, ATypedDayThatCannotBeStaysTypedAndIsTold) {
    type(QStringLiteral("in June"));
    EXPECT_EQ(desk().day(), kToday);
    EXPECT_EQ(bar().field()->text(), QStringLiteral("in June"));
    EXPECT_NE(said().find("A day, such as"), std::string::npos) << said();
    type(QStringLiteral("1 Jan 2026"));
    EXPECT_NE(said().find("Nothing is recorded here before 10 May 2026"), std::string::npos) << said();
    QTest::keyClick(bar().field(), Qt::Key_Escape);
    EXPECT_EQ(bar().field()->text(), QStringLiteral("15 Sep 2026"));
}

TEST_F(WindowTime, PlayRunsThroughTheDaysAndStops) {
    key(Qt::Key_Home);
    key(Qt::Key_Space);
    EXPECT_TRUE(time().playing());
    EXPECT_TRUE(QTest::qWaitFor([&] { return desk().day() > dayOf(2026, 5, 12); }, 5000));
    QTest::mouseClick(bar().playButton(), Qt::LeftButton);
    EXPECT_FALSE(time().playing());
    const core::Day stopped = desk().day();
    EXPECT_LT(stopped, kToday);
    expectYardOf(stopped);
    QTest::qWait(300);
    EXPECT_EQ(desk().day(), stopped) << "stopped at once";
}

TEST_F(WindowTime, PlayEndsAtToday) {
    type(QStringLiteral("13 Sep 2026"));
    key(Qt::Key_Space);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !time().playing(); }, 5000));
    EXPECT_EQ(desk().day(), kToday);
    expectYardOf(kToday);
}

TEST_F(WindowTime, PastDaysAreForLookingUntilOpened) {
    const auto ground = [&](core::MmPoint p) { return plan().camera().toView(p).toPoint(); };
    const auto drag = [&](const char* label, core::MmPoint to) {
        const QPoint from = plan().viewPointOf(book.idOf(label)).toPoint();
        QTest::mousePress(&plan(), Qt::LeftButton, {}, from);
        for (int i = 1; i <= 5; ++i) QTest::mouseMove(&plan(), from + (ground(to) - from) * i / 5);
        QTest::mouseRelease(&plan(), Qt::LeftButton, {}, ground(to));
    };
    const std::string before = exported("placements.csv");
    type(QStringLiteral("25 Jun 2026"));
    EXPECT_EQ(bar().lockButton()->text(), QStringLiteral("Past days are for looking"));
    drag("B3", {4000, 2500});
    EXPECT_NE(said().find("Past days are for looking"), std::string::npos) << said();
    window->page()->logVisit();
    desk().choose(book.idOf("B3"));
    window->page()->logVisit();
    EXPECT_FALSE(window->page()->panel()->isVisible());
    EXPECT_NE(said().find("25 Jun 2026"), std::string::npos) << said();
    EXPECT_EQ(exported("placements.csv"), before);

    QTest::mouseClick(bar().lockButton(), Qt::LeftButton);
    EXPECT_EQ(bar().lockButton()->text(), QStringLiteral("Past days can be written"));
    drag("B3", {4000, 2500});
    EXPECT_NE(said().find("Carried B3"), std::string::npos) << said();
    EXPECT_NE(exported("placements.csv").find("B3,2026-06-25,Kiln Field"), std::string::npos)
        << "read by a second process: " << exported("placements.csv");
    expectYardOf(dayOf(2026, 6, 25));
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(exported("placements.csv"), before);

    QTest::mouseClick(bar().todayButton(), Qt::LeftButton);
    EXPECT_EQ(desk().day(), kToday);
    type(QStringLiteral("25 Jun 2026"));
    EXPECT_FALSE(desk().pastOpen()) << "locked again once today was chosen";
}

TEST_F(WindowTime, RecordsAreProposedForTheDayThatIsOpen) {
    type(QStringLiteral("25 Jun 2026"));
    QTest::mouseClick(bar().lockButton(), Qt::LeftButton);
    desk().choose(book.idOf("B1"));
    window->page()->logVisit();
    EXPECT_EQ(window->page()->findChild<ui::visit::VisitForm*>()->draft().day, dayOf(2026, 6, 25));
}

TEST_F(WindowTime, AHiveCarriedSinceIsNotCarriedBefore) {
    const std::string before = exported("placements.csv");
    type(QStringLiteral("20 Jun 2026"));
    QTest::mouseClick(bar().lockButton(), Qt::LeftButton);
    desk().choose(book.idOf("B4"));
    plan().setFocus();
    QTest::keyClick(&plan(), Qt::Key_Up);
    QTest::keyClick(&plan(), Qt::Key_Return);
    EXPECT_NE(said().find("2026-07-01"), std::string::npos) << said();
    EXPECT_EQ(exported("placements.csv"), before);
}

TEST_F(WindowTime, AnotherYardAndPlaceKeepTheDaySensible) {
    type(QStringLiteral("25 Jun 2026"));
    desk().setYard(book.emptyYard());
    EXPECT_EQ(desk().day(), dayOf(2026, 6, 25));
    EXPECT_TRUE(plan().scene().hives.empty());
    EXPECT_TRUE(strip().records().empty());
    EXPECT_LE(strip().first(), dayOf(2026, 6, 25));
    desk().setYard(book.yard());
    expectYardOf(dayOf(2026, 6, 25));
    window->setPlace(ui::window::Place::MergeDay);
    EXPECT_EQ(desk().day(), kToday) << "the likely merge day";
    EXPECT_GT(strip().last(), kToday) << "a merge day may lie ahead";
    key(Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(desk().day(), kToday + 7);
    EXPECT_EQ(window->page()->mergeDay(), kToday + 7) << "one day is shown";
    EXPECT_FALSE(desk().carryBarred().isEmpty()) << "a day to come is only looked at";
    window->setPlace(ui::window::Place::YardPlan);
    EXPECT_EQ(desk().day(), kToday);
}

TEST_F(WindowTime, BeforeItsFirstHiveAYardIsEmpty) {
    window->setPlace(ui::window::Place::MergeDay);
    desk().setDay(dayOf(2026, 5, 1)); // as by the board's own field
    EXPECT_EQ(strip().day(), dayOf(2026, 5, 1));
    EXPECT_TRUE(plan().scene().hives.empty());
    key(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(desk().day(), dayOf(2026, 5, 10));
    EXPECT_EQ(plan().scene().hives.size(), 4u);
}

} // namespace
