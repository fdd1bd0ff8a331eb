#include "tests/ui/first_book.h"

#include "ui/plan/sketch.h"
#include "ui/window/commands.h"
#include "ui/window/top_bar.h"
#include "ui/window/yard_commands.h"

#include <QAction>
#include <QApplication>
#include <QElapsedTimer>

namespace {

using tests::FirstBook;

struct Yard : FirstBook {};

TEST_F(Yard, ANewBookSaysWhatToDoNextAndTheYardIsMadeByKeys) {
    hand->key(Qt::Key_N, Qt::ControlModifier);
    ASSERT_TRUE(button("nameFirstYard"));
    hand->key(Qt::Key_Return);
    ASSERT_TRUE(formOpen());
    hand->type(QStringLiteral("Salt Lane"));
    hand->key(Qt::Key_Tab);
    hand->type(QStringLiteral("33.5 S"));
    EXPECT_TRUE(hand->noteOf(QStringLiteral("latitude")).startsWith(QStringLiteral("South")));
    hand->key(Qt::Key_Tab);
    hand->type(QStringLiteral("151.25 E"));
    hand->key(Qt::Key_Return);
    EXPECT_FALSE(formOpen()) << said();
    const auto yards = desk().session().yards();
    ASSERT_EQ(yards.size(), 1u);
    EXPECT_EQ(yards[0].name, QStringLiteral("Salt Lane"));
    EXPECT_EQ(yards[0].latitudeDeg, -33.5);
    EXPECT_EQ(yards[0].longitudeDeg, 151.25);
    EXPECT_FALSE(yards[0].gateX) << "not recorded stays so";
    EXPECT_TRUE(button("setUpRow")->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), button("setUpRow"));
}

TEST_F(Yard, LeavingTheFirstFormGoesBackToTheEmptyBook) {
    hand->key(Qt::Key_N, Qt::ControlModifier);
    hand->key(Qt::Key_Return);
    hand->key(Qt::Key_Escape);
    EXPECT_TRUE(button("nameFirstYard")->isVisible());
    EXPECT_EQ(lines(), 0u);
}

TEST_F(Yard, TheGateIsSetByAClickOnThePlan) {
    hand->key(Qt::Key_N, Qt::ControlModifier);
    hand->key(Qt::Key_Return);
    hand->type(QStringLiteral("Salt Lane"));
    hand->clickGround({2000, -1500});
    ASSERT_TRUE(plan()->sketch().gate);
    EXPECT_EQ(*plan()->sketch().gate, (core::MmPoint{2000, -1500}));
    hand->drag({2000, -1500}, {1000, -3000});
    hand->key(Qt::Key_Return);
    ASSERT_EQ(desk().session().yards().size(), 1u) << said();
    EXPECT_EQ(desk().session().yards()[0].gate(), (core::MmPoint{1000, -3000}));
}

TEST_F(Yard, WhatCannotBeIsSaidBesideTheFieldAndStaysTyped) {
    hand->key(Qt::Key_N, Qt::ControlModifier);
    hand->key(Qt::Key_Return);
    hand->fill(QStringLiteral("latitude"), QStringLiteral("95"));
    EXPECT_FALSE(hand->problemOf(QStringLiteral("latitude")).isEmpty());
    hand->fill(QStringLiteral("y"), QStringLiteral("far"));
    EXPECT_FALSE(hand->problemOf(QStringLiteral("y")).isEmpty());
    hand->key(Qt::Key_Return);
    EXPECT_TRUE(formOpen());
    EXPECT_FALSE(hand->problemOf(QStringLiteral("name")).isEmpty()) << "missing, once saving was tried";
    EXPECT_EQ(window->page()->panel()->values().at(QStringLiteral("latitude")), QStringLiteral("95"));
    EXPECT_EQ(lines(), 0u);
}

TEST_F(Yard, ANameInUseIsRefusedWhereItIsTyped) {
    beginYard();
    hand->key(Qt::Key_Y, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(plan()->scene().blank) << "the other yard is not drawn under it";
    hand->type(QStringLiteral("kiln field"));
    EXPECT_TRUE(hand->problemOf(QStringLiteral("name")).contains(QStringLiteral("already")));
    hand->type(QStringLiteral(" two"));
    hand->key(Qt::Key_Return);
    EXPECT_EQ(desk().session().yards().size(), 2u) << said();
    EXPECT_EQ(desk().session().yard(*desk().yard())->name, QStringLiteral("kiln field two")) << "it is shown";
}

TEST_F(Yard, ChangingItIsOneEditAndOneUndo) {
    beginYard();
    window->commands()->yards()->changeYard->trigger();
    hand->fill(QStringLiteral("latitude"), QStringLiteral("51.9"));
    hand->key(Qt::Key_Return);
    EXPECT_EQ(desk().session().yards()[0].latitudeDeg, 51.9) << said();
    hand->key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(desk().session().yards()[0].latitudeDeg);
}

TEST_F(Yard, NoTwoCommandsShareAKey) {
    std::map<QString, QString> of;
    for (const QAction* action : window->actions())
        for (const QKeySequence& keys : action->shortcuts()) {
            const QString text = keys.toString();
            EXPECT_FALSE(of.contains(text))
                << text.toStdString() << ": " << action->text().toStdString() << " and " << of[text].toStdString();
            of[text] = action->text();
        }
    EXPECT_GT(of.size(), 10u);
}

struct HiveRows : FirstBook {};

/// How quickly a yard of 24 hives stands: the figures of the README.
TEST_F(HiveRows, TwentyFourHivesStandAfterAFewKeys) {
    QElapsedTimer time;
    time.start();
    hand->key(Qt::Key_N, Qt::ControlModifier);
    hand->key(Qt::Key_Return);
    hand->type(QStringLiteral("Kiln Field"));
    hand->key(Qt::Key_Tab);
    hand->type(QStringLiteral("51.9"));
    hand->key(Qt::Key_Return);
    hand->key(Qt::Key_Return);
    hand->type(QStringLiteral("24"));
    hand->key(Qt::Key_Return);
    EXPECT_EQ(standing().size(), 24) << said();
    EXPECT_EQ(hand->clicks(), 0);
    EXPECT_EQ(hand->presses(), 23); // and what names the book
    EXPECT_LT(time.elapsed(), 60'000);
    RecordProperty("clicks", hand->clicks());
    RecordProperty("presses", hand->presses());
    RecordProperty("milliseconds", static_cast<int>(time.elapsed()));
}

TEST_F(HiveRows, ItIsSeenOnThePlanBeforeItIsMadeAndTakenBackAsOne) {
    beginYard();
    hand->click(button("setUpRow"));
    EXPECT_EQ(plan()->sketch().hives.size(), 12u);
    EXPECT_EQ(hand->noteOf(QStringLiteral("label")), QStringLiteral("K1, K2 … K12"));
    hand->fill(QStringLiteral("count"), QStringLiteral("5"));
    hand->fill(QStringLiteral("spacing"), QStringLiteral("2"));
    hand->fill(QStringLiteral("bearing"), QStringLiteral("N"));
    hand->fill(QStringLiteral("heading"), QStringLiteral("south-east"));
    ASSERT_EQ(plan()->sketch().hives.size(), 5u);
    EXPECT_EQ(plan()->sketch().hives[4].mark.at, (core::MmPoint{0, 11000}));
    EXPECT_EQ(plan()->sketch().hives[4].mark.headingDeg, 135);
    EXPECT_EQ(plan()->sketch().hives[4].mark.label, QStringLiteral("K5"));
    for (const auto& g : plan()->sketch().hives) {
        EXPECT_TRUE(plan()->rect().contains(plan()->camera().toView(g.mark.at).toPoint())) << "in view";
        EXPECT_FALSE(g.refused);
    }
    const size_t before = lines();
    hand->key(Qt::Key_Return);
    EXPECT_EQ(standing(), (QStringList{"K1 0,3 135", "K2 0,5 135", "K3 0,7 135", "K4 0,9 135", "K5 0,11 135"}))
        << said();
    EXPECT_EQ(lines(), before + 1);
    EXPECT_TRUE(plan()->sketch().empty());
    hand->key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(standing().isEmpty());
    EXPECT_TRUE(button("setUpRow")->isVisible()) << "the empty yard says again what to do";
}

TEST_F(HiveRows, ItIsDraggedAndSetByAClick) {
    beginYard();
    hand->click(button("setUpRow"));
    hand->fill(QStringLiteral("count"), QStringLiteral("4"));
    const core::MmPoint start = plan()->sketch().hives[0].mark.at;
    hand->drag(plan()->sketch().hives[2].mark.at, plan()->sketch().hives[2].mark.at + core::MmPoint{1000, 2000});
    EXPECT_EQ(plan()->sketch().hives[0].mark.at, start + (core::MmPoint{1000, 2000})) << "any of them moves the row";
    hand->clickGround({-2000, 1000});
    EXPECT_EQ(plan()->sketch().hives[0].mark.at, (core::MmPoint{-2000, 1000}));
    EXPECT_EQ(window->page()->panel()->values().at(QStringLiteral("x")), QStringLiteral("-2"));
    hand->key(Qt::Key_Up);
    hand->key(Qt::Key_Return);
    EXPECT_EQ(standing().value(0), QStringLiteral("K1 -2,1.1 180")) << said();
}

TEST_F(HiveRows, TheNextGoesOnBehindTheLastAndLikeIt) {
    beginYard();
    hand->click(button("setUpRow"));
    hand->fill(QStringLiteral("count"), QStringLiteral("3"));
    hand->fill(QStringLiteral("heading"), QStringLiteral("E"));
    hand->key(Qt::Key_Return);
    hand->key(Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_FALSE(plan()->sketch().hives.empty());
    EXPECT_EQ(plan()->sketch().hives[0].mark.label, QStringLiteral("K4"));
    EXPECT_EQ(plan()->sketch().hives[0].mark.at, (core::MmPoint{0, 6000}));
    EXPECT_EQ(plan()->sketch().hives[0].mark.headingDeg, 90);
}

TEST_F(HiveRows, LabelsInUseAndGroundThatIsTakenAreSaidAsTyped) {
    beginYard();
    hand->click(button("setUpRow"));
    hand->fill(QStringLiteral("count"), QStringLiteral("3"));
    hand->key(Qt::Key_Return);
    hand->key(Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
    hand->fill(QStringLiteral("label"), QStringLiteral("k3"));
    EXPECT_EQ(hand->problemOf(QStringLiteral("label")), QStringLiteral("k3 is in use."));
    EXPECT_TRUE(plan()->sketch().hives[0].refused);
    EXPECT_FALSE(plan()->sketch().hives[1].refused);
    hand->fill(QStringLiteral("label"), QStringLiteral("K4"));
    hand->fill(QStringLiteral("y"), QStringLiteral("3.2"));
    EXPECT_TRUE(hand->problemOf(QStringLiteral("x")).contains(QStringLiteral("K1 stands where K4 would")));
    hand->fill(QStringLiteral("label"), QStringLiteral("old hive"));
    EXPECT_FALSE(hand->problemOf(QStringLiteral("label")).isEmpty());
    const size_t before = lines();
    hand->key(Qt::Key_Return);
    EXPECT_EQ(lines(), before);
    EXPECT_TRUE(formOpen());
    hand->key(Qt::Key_Escape);
    hand->key(Qt::Key_Escape);
    EXPECT_FALSE(formOpen());
    EXPECT_TRUE(plan()->sketch().empty());
    EXPECT_FALSE(plan()->aim().on());
}

TEST_F(HiveRows, AThickRowIsAskedAboutOnce) {
    beginYard();
    hand->click(button("setUpRow"));
    hand->fill(QStringLiteral("spacing"), QStringLiteral("0.5"));
    hand->key(Qt::Key_Return);
    EXPECT_TRUE(formOpen());
    EXPECT_TRUE(standing().isEmpty());
    hand->key(Qt::Key_Return);
    EXPECT_EQ(standing().size(), 12);
}

struct Placing : FirstBook {
    void SetUp() override {
        FirstBook::SetUp();
        beginYard();
        hand->click(button("placeHives"));
        ASSERT_TRUE(plan()->aim().on());
    }
};

TEST_F(Placing, EachClickPutsTheNextDown) {
    const size_t before = lines();
    hand->clickGround({1000, 2000});
    hand->clickGround({3000, 2000});
    hand->clickGround({5040, 2030});
    EXPECT_EQ(standing(), (QStringList{"K1 1,2 180", "K2 3,2 180", "K3 5,2 180"})) << said() << " snapped to the row";
    EXPECT_EQ(lines(), before + 3);
    hand->key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(standing().size(), 2);
    hand->clickGround({3000, 4000});
    EXPECT_EQ(standing().value(2), QStringLiteral("K3 3,4 180")) << "its label is free again";
}

TEST_F(Placing, ItIsAdjustedInTheFormAndTheNextIsLikeIt) {
    hand->fill(QStringLiteral("heading"), QStringLiteral("135"));
    hand->fill(QStringLiteral("box"), QStringLiteral("dadant-12"));
    hand->fill(QStringLiteral("brood"), QStringLiteral("two"));
    hand->fill(QStringLiteral("since"), QStringLiteral("10 May 2025"));
    hand->fill(QStringLiteral("queen"), QStringLiteral("2024"));
    hand->clickGround({1000, 2000});
    hand->clickGround({3000, 2000});
    const auto& s = desk().reading().snapshot;
    for (const char* label : {"K1", "K2"}) {
        const auto ix = s.livingNamed(QString::fromLatin1(label));
        ASSERT_TRUE(ix) << said();
        EXPECT_EQ(s.colony(*ix).since, core::dayOf(2025, 5, 10));
        EXPECT_EQ(s.colony(*ix).broodBoxes, 2);
        EXPECT_EQ(s.boxKindOf(*ix).name, QStringLiteral("dadant-12"));
        EXPECT_EQ(s.placeOf(*ix)->headingDeg, 135);
    }
    EXPECT_EQ(s.colony(*s.livingNamed(u"K1")).queenBorn, 2024);
    EXPECT_FALSE(s.colony(*s.livingNamed(u"K2")).queenBorn) << "each queen has her own year";
}

TEST_F(Placing, ByKeysAlone) {
    const core::MmPoint first = plan()->aim().at();
    hand->key(Qt::Key_Right);
    hand->key(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(plan()->sketch().hives[0].mark.at, first + (core::MmPoint{100, 10}));
    EXPECT_EQ(plan()->accessibleDescription(), QStringLiteral("K1 at 0.1 m east, 3.01 m north"));
    hand->key(Qt::Key_Return);
    hand->key(Qt::Key_Return);
    hand->key(Qt::Key_Return);
    EXPECT_EQ(standing(), (QStringList{"K1 0.1,3.01 180", "K2 1.6,3.01 180", "K3 3.1,3.01 180"})) << said();
    hand->key(Qt::Key_Escape);
    EXPECT_FALSE(plan()->aim().on());
    EXPECT_FALSE(formOpen());
    hand->key(Qt::Key_Return);
    EXPECT_EQ(standing().size(), 3);
}

TEST_F(Placing, TooNearAnotherIsRefusedWithASentence) {
    hand->clickGround({1000, 2000});
    hand->clickGround({1000, 2000});
    EXPECT_EQ(standing().size(), 1);
    EXPECT_NE(said().find("K1 stands there"), std::string::npos) << said();
    EXPECT_TRUE(plan()->sketch().hives.at(0).refused);
    hand->clickGround({2000, 2000});
    EXPECT_EQ(standing().size(), 2) << said();
}

TEST_F(Placing, AnEmptyStandTakesTheNextColony) {
    hand->clickGround({1000, 2000});
    hand->clickGround({3000, 2000});
    hand->key(Qt::Key_Escape);
    hand->drag({1000, 2000}, {2000, 3000}); // carried: its stand is empty
    ASSERT_EQ(plan()->scene().stands.size(), 1u) << said();
    EXPECT_EQ(plan()->scene().stands[0].at, (core::MmPoint{1000, 2000}));
    hand->clickGround({1000, 2000});
    EXPECT_NE(said().find("Stand 1 is empty"), std::string::npos) << said();
    hand->key(Qt::Key_G, Qt::ControlModifier);
    EXPECT_EQ(plan()->aim().at(), (core::MmPoint{1000, 2000}));
    hand->key(Qt::Key_Return);
    EXPECT_EQ(standing().value(2), QStringLiteral("K3 1,2 180")) << said();
    EXPECT_EQ(desk().session().standsOf(*desk().yard()).size(), 3u) << "no second stand there";
}

TEST_F(Placing, AnEmptyStandIsChosenByName) {
    hand->clickGround({1000, 2000});
    hand->key(Qt::Key_Escape);
    hand->drag({1000, 2000}, {2000, 3000});
    hand->key(Qt::Key_G, Qt::ControlModifier);
    hand->fill(QStringLiteral("stand"), QStringLiteral("1"));
    EXPECT_EQ(plan()->sketch().hives.at(0).mark.at, (core::MmPoint{1000, 2000}));
    hand->pointAt({4000, 4000});
    EXPECT_EQ(window->page()->panel()->values().at(QStringLiteral("stand")), QString()) << "moved off it";
    hand->fill(QStringLiteral("stand"), QStringLiteral("1"));
    hand->key(Qt::Key_Return);
    EXPECT_EQ(standing().value(1), QStringLiteral("K2 1,2 180")) << said();
}

TEST_F(Placing, MovingTheGhostIsNoTypingThatCouldBeLost) {
    hand->pointAt({4000, 4000});
    EXPECT_FALSE(window->page()->panel()->dirty());
    window->setPlace(ui::window::Place::MergeDay);
    EXPECT_EQ(window->page()->place(), ui::window::Place::MergeDay);
    EXPECT_FALSE(plan()->aim().on());
}

} // namespace
