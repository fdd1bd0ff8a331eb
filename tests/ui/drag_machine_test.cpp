#include "ui/plan/drag_machine.h"

#include <gtest/gtest.h>

namespace {

using core::ColonyId;
using core::MmPoint;
using ui::plan::DragMachine;
using State = DragMachine::State;

constexpr double kThreshold = 10;
const ColonyId kHive{4};
const ColonyId kOther{5};

/// A view of 10 mm a pixel; everything snaps to half a metre; the other hive stands at 3 m east.
DragMachine machine() {
    ui::plan::Ground ground;
    ground.toPlan = [](const QPointF& p) {
        return MmPoint{static_cast<qint32>(p.x() * 10), static_cast<qint32>(-p.y() * 10)};
    };
    ground.snap = [](MmPoint at, ColonyId) { return MmPoint{(at.x + 250) / 500 * 500, at.y / 500 * 500}; };
    ground.inTheWay = [](MmPoint at, ColonyId carried) {
        return at == MmPoint{3000, 0} && carried != kOther ? std::optional(kOther) : std::nullopt;
    };
    return DragMachine(std::move(ground), kThreshold);
}

TEST(DragMachine, APressThatWandersLessThanTheThresholdIsAClick) {
    DragMachine m = machine();
    m.press(kHive, {0, 0}, {3, 0});
    EXPECT_EQ(m.state(), State::Pressed);
    EXPECT_FALSE(m.move({3 + kThreshold - 1, 0}, true));
    EXPECT_EQ(m.state(), State::Pressed);
    EXPECT_FALSE(m.release());
    EXPECT_EQ(m.state(), State::Idle);
}

TEST(DragMachine, AtTheThresholdItIsADrag) {
    DragMachine m = machine();
    m.press(kHive, {0, 0}, {0, 0});
    EXPECT_TRUE(m.move({kThreshold, 0}, true));
    EXPECT_EQ(m.state(), State::Dragging);
}

TEST(DragMachine, TheGripIsKeptAndTheDropIsOneCarry) {
    DragMachine m = machine();
    m.press(kHive, {0, 0}, {3, 0}); // gripped 30 mm east of its middle
    ASSERT_TRUE(m.move({203, 0}, false));
    const auto drop = m.release();
    ASSERT_TRUE(drop);
    EXPECT_EQ(drop->colony, kHive);
    EXPECT_EQ(drop->from, (MmPoint{0, 0}));
    EXPECT_EQ(drop->to, (MmPoint{2000, 0}));
    EXPECT_FALSE(drop->blockedBy);
    EXPECT_FALSE(m.release()) << "one drop, one carry";
}

TEST(DragMachine, ItSnapsUnlessToldNotTo) {
    DragMachine m = machine();
    m.press(kHive, {0, 0}, {0, 0});
    EXPECT_EQ(m.move({113, 0}, true)->to, (MmPoint{1000, 0}));
    EXPECT_EQ(m.move({113, 0}, false)->to, (MmPoint{1130, 0}));
}

TEST(DragMachine, WhereAnotherStandsIsMarkedAndReturned) {
    DragMachine m = machine();
    m.press(kHive, {0, 0}, {0, 0});
    EXPECT_EQ(m.move({300, 0}, true)->blockedBy, kOther);
    const auto drop = m.release();
    ASSERT_TRUE(drop);
    EXPECT_EQ(drop->blockedBy, kOther);
}

TEST(DragMachine, BackHomeIsNoEdit) {
    DragMachine m = machine();
    m.press(kHive, {0, 0}, {0, 0});
    m.move({200, 0}, true);
    m.move({4, 0}, true);
    EXPECT_FALSE(m.release());
}

TEST(DragMachine, AbortFromEachStateLeavesNothing) {
    DragMachine m = machine();
    EXPECT_FALSE(m.abort()) << "idle: nothing was under way";
    m.press(kHive, {0, 0}, {0, 0});
    EXPECT_TRUE(m.abort());
    EXPECT_EQ(m.state(), State::Idle);
    m.press(kHive, {0, 0}, {0, 0});
    m.move({200, 0}, true);
    EXPECT_TRUE(m.abort());
    EXPECT_FALSE(m.release());
    m.nudge(kHive, {0, 0}, {100, 0});
    EXPECT_TRUE(m.abort());
    EXPECT_FALSE(m.release());
}

TEST(DragMachine, ABurstOfKeysIsOneCarry) {
    DragMachine m = machine();
    m.nudge(kHive, {0, 0}, {100, 0});
    m.nudge(kHive, {0, 0}, {100, 0});
    EXPECT_EQ(m.nudge(kHive, {0, 0}, {0, -10}).to, (MmPoint{200, -10}));
    EXPECT_TRUE(m.carrying());
    const auto drop = m.release();
    ASSERT_TRUE(drop);
    EXPECT_EQ(drop->to, (MmPoint{200, -10}));
}

TEST(DragMachine, AMoveWithoutAPressIsNothing) {
    DragMachine m = machine();
    EXPECT_FALSE(m.move({500, 500}, true));
    EXPECT_EQ(m.state(), State::Idle);
}

} // namespace
