#include "ui/plan/aim.h"
#include "ui/plan/ground.h"

#include <gtest/gtest.h>

#include <vector>

namespace {

using ui::plan::Aim;

/// An aim and what it said.
struct Aiming : ::testing::Test {
    Aim aim;
    std::vector<core::MmPoint> moved;
    std::vector<core::MmPoint> put;
    int left = 0;

    Aiming() {
        QObject::connect(&aim, &Aim::moved, [this](core::MmPoint at) { moved.push_back(at); });
        QObject::connect(&aim, &Aim::put, [this](core::MmPoint at) { put.push_back(at); });
        QObject::connect(&aim, &Aim::left, [this] { ++left; });
    }
};

TEST_F(Aiming, OffItTakesNothing) {
    aim.hover({100, 100});
    aim.click({100, 100});
    aim.nudge({1, 0});
    aim.enter();
    aim.escape();
    EXPECT_TRUE(moved.empty() && put.empty());
    EXPECT_EQ(left, 0);
}

TEST_F(Aiming, FollowingAClickPutsItDownAgainAndAgain) {
    aim.start(Aim::Way::Follows, {0, 0});
    aim.hover({500, 0});
    aim.click({600, 0});
    aim.click({600, 0});
    EXPECT_EQ(moved, (std::vector<core::MmPoint>{{500, 0}, {600, 0}}));
    EXPECT_EQ(put, (std::vector<core::MmPoint>{{600, 0}, {600, 0}}));
    EXPECT_TRUE(aim.on());
}

TEST_F(Aiming, StayingAClickMovesItAndEnterPutsItDown) {
    aim.start(Aim::Way::Stays, {0, 0});
    aim.hover({500, 0});
    EXPECT_TRUE(moved.empty()) << "the pointer alone moves nothing";
    aim.click({600, 0});
    EXPECT_TRUE(put.empty());
    aim.enter();
    EXPECT_EQ(put, (std::vector<core::MmPoint>{{600, 0}}));
}

TEST_F(Aiming, ADragKeepsItsGripAndEscapeTakesTheDragAlone) {
    aim.start(Aim::Way::Stays, {1000, 1000});
    aim.grip({1100, 900});
    EXPECT_EQ(aim.draggedTo({2100, 900}), (core::MmPoint{2000, 1000}));
    aim.drag({2000, 1000});
    aim.escape();
    EXPECT_EQ(aim.at(), (core::MmPoint{1000, 1000}));
    EXPECT_EQ(left, 0);
    EXPECT_FALSE(aim.gripped());
    aim.escape();
    EXPECT_EQ(left, 1);
}

TEST_F(Aiming, KeysMoveItFromWhereItWasTyped) {
    aim.start(Aim::Way::Follows, {0, 0});
    aim.moveTo({5000, 0});
    EXPECT_TRUE(moved.empty());
    aim.nudge({100, 0});
    aim.nudge({0, -10});
    EXPECT_EQ(aim.at(), (core::MmPoint{5100, -10}));
    EXPECT_EQ(moved.size(), 2u);
}

TEST(Snapped, AnEmptyStandDrawsItInFromWithinReach) {
    ui::plan::Scene scene;
    scene.stands = {{{1}, QStringLiteral("1"), {2130, 1070}}, {{2}, QStringLiteral("2"), {2300, 1070}}};
    EXPECT_EQ(ui::plan::snapped(scene, {2200, 1070}, {}, 300), (core::MmPoint{2130, 1070})) << "the nearest";
    EXPECT_EQ(ui::plan::snapped(scene, {2551, 1070}, {}, 200), (core::MmPoint{2600, 1100}))
        << "else the tenth of a metre";
}

} // namespace
