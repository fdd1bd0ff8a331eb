#include "tests/ui/open_window.h"

#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/form/form_panel.h"
#include "ui/hand/hand_desk.h"
#include "ui/window/yard_list.h"

#include <QApplication>
#include <QLabel>
#include <QListView>
#include <QProcess>
#include <QPushButton>

#include <cmath>

// Gestures of the hand on the plan: several hives, two swapped, on another hive, on another yard; each by mouse and by
// keys, its abort and its undo.

namespace {

namespace edit = core::edit;
using core::MmPoint;

struct Hands : tests::OpenWindow {
    core::ColonyId id(const char* label) const { return book.idOf(QLatin1StringView(label)); }
    MmPoint stands(const char* label) const { return book.placeOf(QLatin1StringView(label)); }
    size_t lines() const { return book.history().size(); }
    void click(const char* label, Qt::KeyboardModifiers with = {}) const {
        QTest::mouseClick(plan(), Qt::LeftButton, with, at(label));
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const { QTest::keyClick(plan(), key, with); }
    void undo() const { QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier); }
    void dragWith(const QPoint& from, const QPoint& to, Qt::KeyboardModifiers with, bool release = true) const {
        QTest::mousePress(plan(), Qt::LeftButton, {}, from);
        for (int i = 1; i <= 5; ++i) move(from + (to - from) * i / 5, with);
        if (release) QTest::mouseRelease(plan(), Qt::LeftButton, with, to);
    }
    /// QTest::mouseMove knows no modifiers.
    void move(const QPoint& to, Qt::KeyboardModifiers with = {}) const {
        QMouseEvent event(QEvent::MouseMove, QPointF(to), QPointF(plan()->mapToGlobal(to)), Qt::NoButton,
                          Qt::LeftButton, with);
        QApplication::sendEvent(plan(), &event);
    }
    void write(const edit::Edit& edit) const { window->desk()->session().apply(edit); }
    /// The labels of hives and where another process finds them today: "A5 8,3".
    QStringList exported() const {
        QTemporaryDir out;
        QProcess other;
        other.start(QStringLiteral(YW_PROGRAM),
                    {QStringLiteral("export"), book.path(), QStringLiteral("--to"), out.path()});
        EXPECT_TRUE(other.waitForFinished());
        QFile file(out.filePath(QStringLiteral("placements.csv")));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return QString::fromUtf8(file.readAll()).split(u'\n');
    }
};

// Cautions and drift.

TEST_F(Hands, TheMovingCautionIsSaidWhileDraggingAndAfterwards) {
    drag(at("A5"), ground({8000, 3000}), false);
    EXPECT_NE(said().find("A5: 3.0 m north."), std::string::npos) << said();
    EXPECT_NE(said().find("Moving caution: "), std::string::npos) << said();
    EXPECT_NE(said().find("(custom)"), std::string::npos) << said();
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({8000, 3000}));
    EXPECT_NE(said().find("Carried A5 3 m north"), std::string::npos) << said();
    EXPECT_NE(said().find("Moving caution: "), std::string::npos) << said();
}

TEST_F(Hands, AStepOrAWinterCarryHasNoCaution) {
    drag(at("A5"), ground({8000, 900}));
    EXPECT_EQ(stands("A5"), (MmPoint{8000, 900})) << said();
    EXPECT_EQ(said().find("Moving caution"), std::string::npos) << said();
    write([](const edit::EditContext& c) {
        return edit::setSetting(c, QStringLiteral("season.fall_end"), QStringLiteral("09-01"));
    });
    drag(at("A6"), ground({10000, 4000}));
    EXPECT_EQ(stands("A6"), (MmPoint{10000, 4000})) << said();
    EXPECT_EQ(said().find("Moving caution"), std::string::npos) << said();
}

TEST_F(Hands, ForagersDriftToTheNeighboursUntilTheNextClick) {
    drag(at("A4"), ground({6000, 4000}), false);
    ASSERT_EQ(plan()->drift().size(), 1u);
    EXPECT_EQ(plan()->drift().front().from, (MmPoint{6000, 0}));
    EXPECT_EQ(plan()->drift().front().to.size(), 2u) << "A3 and A5, 2 m away";
    EXPECT_NE(said().find("held A3 (2 m)"), std::string::npos) << said();
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({6000, 4000}));
    ASSERT_EQ(plan()->drift().size(), 1u);
    EXPECT_TRUE(plan()->drift().front().to.front().held || plan()->drift().front().to.back().held);
    EXPECT_NE(said().find("Foragers will look for A4 at its old place; held A3 (2 m) and A5 (2 m) stand next to it."),
              std::string::npos)
        << said();
    QTest::mouseClick(plan(), Qt::LeftButton, {}, ground({3000, -3000}));
    EXPECT_TRUE(plan()->drift().empty());
}

TEST_F(Hands, EscapeAndUndoTakeTheDriftAway) {
    drag(at("A4"), ground({6000, 4000}));
    key(Qt::Key_Escape);
    EXPECT_TRUE(plan()->drift().empty());
    EXPECT_EQ(plan()->chosenHive(), id("A4")) << "still chosen";
    drag(at("A2"), ground({2000, 4000}));
    ASSERT_FALSE(plan()->drift().empty());
    undo();
    EXPECT_TRUE(plan()->drift().empty());
}

TEST_F(Hands, AHeldNeighbourIsDrawnOtherwiseInGreyToo) {
    drag(at("A4"), ground({6000, 4000}));
    const QImage with = plan()->grab().toImage().convertToFormat(QImage::Format_Grayscale8);
    const QRect box = plan()->boxOf(id("A3"));
    const int clear = static_cast<int>(std::hypot(box.width(), box.height()) / 2 + 3);
    const auto bar = [&](const char* label, int side) { // ink across the way, clear of the hive
        const QPoint end = at(label) + QPoint(side * clear, 0);
        int dark = 0;
        for (int y = -12; y <= 12; ++y)
            for (int x = -8; x <= 8; ++x) dark += qGray(with.pixel(end + QPoint(x, y))) < 190 ? 1 : 0;
        return dark;
    };
    EXPECT_GT(bar("A5", -1), 10) << "an angle";
    EXPECT_GT(bar("A3", 1), bar("A5", -1) + 30) << "a bar across the end";
}

// Several.

TEST_F(Hands, SeveralAreDraggedTogetherAndKeepTheirLayout) {
    click("A2");
    click("A3", Qt::ControlModifier);
    click("A5", Qt::ControlModifier);
    const size_t before = lines();
    drag(at("A2"), ground({2000, 4000}), false);
    ASSERT_TRUE(plan()->carry());
    EXPECT_EQ(plan()->carry()->others.size(), 2u);
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({2000, 4000}));
    EXPECT_EQ(stands("A2"), (MmPoint{2000, 4000})) << said();
    EXPECT_EQ(stands("A3"), (MmPoint{4000, 4000}));
    EXPECT_EQ(stands("A5"), (MmPoint{8000, 4000}));
    EXPECT_EQ(lines(), before + 1);
    EXPECT_EQ(window->desk()->selected().size(), 3u) << "the selection stays";
    EXPECT_NE(said().find("Carried A2, A3 and A5 4 m north"), std::string::npos) << said();
    EXPECT_TRUE(exported().filter(QStringLiteral("A3,2026-09-15,Kiln Field")).first().contains(QStringLiteral(",4,4")));
    undo();
    EXPECT_EQ(stands("A5"), (MmPoint{8000, 0}));
    EXPECT_EQ(stands("A2"), (MmPoint{2000, 0}));
}

TEST_F(Hands, SeveralByTheArrowKeys) {
    click("A2");
    click("A3", Qt::ControlModifier);
    const size_t before = lines();
    for (int i = 0; i < 3; ++i) key(Qt::Key_Down);
    key(Qt::Key_Return);
    EXPECT_EQ(stands("A2"), (MmPoint{2000, -300}));
    EXPECT_EQ(stands("A3"), (MmPoint{4000, -300}));
    EXPECT_EQ(lines(), before + 1);
}

TEST_F(Hands, WhereOneOfThemCannotStandNothingIsWritten) {
    click("A2");
    click("A3", Qt::ControlModifier);
    const size_t before = lines();
    drag(at("A2"), ground({4000, 0})); // A3 would come onto A4
    EXPECT_EQ(lines(), before);
    EXPECT_NE(said().find("A4"), std::string::npos) << said();
    EXPECT_NE(said().find("Nothing was carried"), std::string::npos) << said();
}

TEST_F(Hands, AClickOnOneOfSeveralChoosesItAlone) {
    click("A2");
    click("A3", Qt::ControlModifier);
    click("A2");
    EXPECT_EQ(window->desk()->selected(), std::vector{id("A2")});
}

TEST_F(Hands, EscapeBringsSeveralBack) {
    click("A2");
    click("A3", Qt::ControlModifier);
    const size_t before = lines();
    drag(at("A3"), ground({4000, 4000}), false);
    key(Qt::Key_Escape);
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({4000, 4000}));
    EXPECT_EQ(lines(), before);
    EXPECT_EQ(stands("A3"), (MmPoint{4000, 0}));
    EXPECT_EQ(window->desk()->selected().size(), 2u);
}

// Swapped.

TEST_F(Hands, DroppedOnAnotherWithShiftTheyChangePlaces) {
    const size_t before = lines();
    dragWith(at("A5"), at("A2"), Qt::ShiftModifier, false);
    EXPECT_NE(said().find("A5 and A2 change places, 6.0 m apart."), std::string::npos) << said();
    QTest::mouseRelease(plan(), Qt::LeftButton, Qt::ShiftModifier, at("A2"));
    EXPECT_EQ(stands("A5"), (MmPoint{2000, 0})) << said();
    EXPECT_EQ(stands("A2"), (MmPoint{8000, 0}));
    EXPECT_EQ(lines(), before + 1);
    EXPECT_NE(said().find("Swapped A5 and A2, 6 m apart"), std::string::npos) << said();
    EXPECT_NE(said().find("Foragers of each"), std::string::npos) << said();
    EXPECT_FALSE(exported().filter(QStringLiteral("A2,2026-09-15,Kiln Field")).isEmpty());
    undo();
    EXPECT_EQ(stands("A2"), (MmPoint{2000, 0}));
    EXPECT_EQ(stands("A5"), (MmPoint{8000, 0}));
}

TEST_F(Hands, TwoSelectedAreSwappedByKeys) {
    click("A1");
    key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_NE(said().find("Select two hives first"), std::string::npos) << said();
    click("A3", Qt::ControlModifier);
    key(Qt::Key_W, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(stands("A1"), (MmPoint{4000, 0})) << said();
    EXPECT_EQ(stands("A3"), (MmPoint{0, 0}));
    EXPECT_NE(said().find("A3 is held"), std::string::npos) << said();
    EXPECT_EQ(window->desk()->selected().size(), 2u);
}

// On another hive.

TEST_F(Hands, OverAHeldHiveTheRuleIsSaidBeforeTheDrop) {
    const size_t before = lines();
    drag(at("A5"), at("A3"), false);
    EXPECT_NE(said().find("A3 is held: brood not checked."), std::string::npos) << said();
    EXPECT_NE(said().find("4.7.2"), std::string::npos) << said();
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, at("A3"));
    EXPECT_NE(said().find("4.7.2"), std::string::npos) << said();
    EXPECT_EQ(lines(), before);
    EXPECT_EQ(window->page()->panel()->form(), nullptr);
    EXPECT_FALSE(plan()->carrying());
}

TEST_F(Hands, OnAHiveThatItMayUniteWithTheUnionIsProposedAndRecordedByEnter) {
    const size_t before = lines();
    drag(at("A1"), at("A2"), false); // 3 and 3.5 frames: weak with weak
    EXPECT_NE(said().find("a union is proposed: A1 is the one carried, gain "), std::string::npos) << said();
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, at("A2"));
    EXPECT_EQ(lines(), before) << "nothing is written yet";
    ASSERT_NE(window->page()->panel()->form(), nullptr) << said();
    const QString why = window->page()->panel()->findChild<QLabel*>(QStringLiteral("note.into"))->text();
    EXPECT_TRUE(why.contains(QStringLiteral("gain"))) << why.toStdString();
    EXPECT_TRUE(why.contains(QStringLiteral("A1 is the one carried"))) << why.toStdString();
    EXPECT_TRUE(why.contains(QStringLiteral("box goes on top"))) << why.toStdString();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(lines(), before + 1) << said();
    EXPECT_FALSE(window->desk()->reading().find(id("A2")) == std::nullopt);
    EXPECT_FALSE(window->desk()->reading().snapshot.livingNamed(u"A1")) << "it is united";
    undo();
    EXPECT_TRUE(window->desk()->reading().snapshot.livingNamed(u"A1"));
}

TEST_F(Hands, EscapeLeavesTheProposalAndNothingIsWritten) {
    const size_t before = lines();
    drag(at("A2"), at("A1"));
    ASSERT_NE(window->page()->panel()->form(), nullptr) << said();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_EQ(window->page()->panel()->form(), nullptr);
    EXPECT_EQ(lines(), before);
}

TEST_F(Hands, FromTheProposalOnToMergeDay) {
    drag(at("A1"), at("A2"));
    ASSERT_NE(window->page()->panel()->form(), nullptr) << said();
    QTest::keyClick(window.get(), Qt::Key_4, Qt::ControlModifier);
    EXPECT_EQ(window->page()->place(), ui::window::Place::MergeDay);
    EXPECT_EQ(window->page()->panel()->form(), nullptr);
}

// Aborted.

TEST_F(Hands, OutsideThePlanTheHiveStaysWhereItStood) {
    const size_t before = lines();
    drag(at("A5"), {plan()->width() + 60, 300});
    EXPECT_EQ(lines(), before);
    EXPECT_FALSE(plan()->carrying());
}

TEST_F(Hands, ARecordGoneMeanwhileEndsTheDrag) {
    drag(at("A5"), ground({8000, 3000}), false);
    write([this](const edit::EditContext& c) {
        return edit::endColony(c, id("A5"), book.clock().day, core::EndKind::Dead);
    });
    EXPECT_FALSE(plan()->carrying());
    EXPECT_EQ(said(), "A5 is no longer there: nothing was carried.");
    const size_t before = lines();
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({8000, 3000}));
    EXPECT_EQ(lines(), before);
}

TEST_F(Hands, ACarryMeanwhileEndsTheDrag) {
    click("A4");
    click("A5", Qt::ControlModifier);
    drag(at("A5"), ground({8000, 3000}), false);
    write([this](const edit::EditContext& c) { return edit::carryHive(c, id("A4"), {6000, 5000}, book.clock().day); });
    EXPECT_FALSE(plan()->carrying());
    EXPECT_EQ(said(), "A4 was carried meanwhile: nothing was changed here.");
    QTest::mouseRelease(plan(), Qt::LeftButton, {}, ground({8000, 3000}));
    EXPECT_EQ(stands("A5"), (MmPoint{8000, 0}));
    EXPECT_EQ(stands("A4"), (MmPoint{6000, 5000}));
}

} // namespace
