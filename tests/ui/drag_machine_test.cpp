#include "ui/plan/drag_machine.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace {

using core::ColonyId;
using core::MmPoint;
using core::YardId;
using ui::plan::Carry;
using ui::plan::DragMachine;
using ui::plan::Picked;
using State = DragMachine::State;

constexpr double kThreshold = 10;
const ColonyId kHive{4};
const ColonyId kOther{5};
const ColonyId kWith{6};
const YardId kYard{2};
const Picked kHome{kHive, {0, 0}};

/// A view of 10 mm a pixel; everything snaps to half a metre; the other hive stands at 3 m east.
DragMachine machine() {
    ui::plan::Ground ground;
    ground.toPlan = [](const QPointF& p) {
        return MmPoint{static_cast<qint32>(p.x() * 10), static_cast<qint32>(-p.y() * 10)};
    };
    ground.snap = [](MmPoint at, std::span<const ColonyId>) {
        return MmPoint{(at.x + 250) / 500 * 500, at.y / 500 * 500};
    };
    ground.inTheWay = [](MmPoint at, std::span<const ColonyId> carried) {
        const bool own = std::find(carried.begin(), carried.end(), kOther) != carried.end();
        return at == MmPoint{3000, 0} && !own ? std::optional(kOther) : std::nullopt;
    };
    return DragMachine(std::move(ground), kThreshold);
}

// Every event in every state.

enum class Event { Press, MoveNear, MoveFar, MoveOut, MoveToYard, Nudge, Release, Abort };
constexpr std::array kEvents{Event::Press,      Event::MoveNear, Event::MoveFar, Event::MoveOut,
                             Event::MoveToYard, Event::Nudge,    Event::Release, Event::Abort};
constexpr std::array kStates{State::Idle, State::Pressed, State::Dragging, State::Outside, State::Nudging};

/// The state after the event, and whether it gave a carry: to show, or (of a release) to make.
struct Outcome {
    State state;
    bool gave;
    friend bool operator==(const Outcome&, const Outcome&) = default;
};

DragMachine in(State state) {
    DragMachine m = machine();
    switch (state) {
    case State::Idle:
        break;
    case State::Pressed:
        m.press(kHome, {0, 0});
        break;
    case State::Dragging:
        m.press(kHome, {0, 0});
        m.move({100, 0}, true);
        break;
    case State::Outside:
        m.press(kHome, {0, 0});
        m.move({100, 0}, true);
        m.moveOutside(kYard);
        break;
    case State::Nudging:
        m.nudge(kHome, {100, 0});
        break;
    }
    EXPECT_EQ(m.state(), state);
    return m;
}

Outcome after(State state, Event event) {
    DragMachine m = in(state);
    bool gave = false;
    switch (event) {
    case Event::Press:
        m.press(kHome, {0, 0});
        break;
    case Event::MoveNear:
        gave = m.move({3, 0}, true).has_value();
        break;
    case Event::MoveFar:
        gave = m.move({200, 0}, true).has_value();
        break;
    case Event::MoveOut:
        gave = m.moveOutside(std::nullopt).has_value();
        break;
    case Event::MoveToYard:
        gave = m.moveOutside(kYard).has_value();
        break;
    case Event::Nudge:
        m.nudge(kHome, {100, 0});
        gave = true;
        break;
    case Event::Release:
        gave = m.release().has_value();
        break;
    case Event::Abort:
        gave = m.abort();
        break;
    }
    return {m.state(), gave};
}

TEST(DragMachine, EveryEventInEveryState) {
    using S = State;
    // Rows: Idle, Pressed, Dragging, Outside, Nudging. Columns: as kEvents.
    const Outcome expected[kStates.size()][kEvents.size()] = {
        {{S::Pressed, false},
         {S::Idle, false},
         {S::Idle, false},
         {S::Idle, false},
         {S::Idle, false},
         {S::Nudging, true},
         {S::Idle, false},
         {S::Idle, false}},
        {{S::Pressed, false},
         {S::Pressed, false},
         {S::Dragging, true},
         {S::Outside, true},
         {S::Outside, true},
         {S::Nudging, true},
         {S::Idle, false},
         {S::Idle, true}},
        {{S::Pressed, false},
         {S::Dragging, true},
         {S::Dragging, true},
         {S::Outside, true},
         {S::Outside, true},
         {S::Nudging, true},
         {S::Idle, true},
         {S::Idle, true}},
        {{S::Pressed, false},
         {S::Dragging, true},
         {S::Dragging, true},
         {S::Outside, true},
         {S::Outside, true},
         {S::Nudging, true},
         {S::Idle, true},
         {S::Idle, true}},
        {{S::Pressed, false},
         {S::Nudging, false},
         {S::Nudging, false},
         {S::Nudging, false},
         {S::Nudging, false},
         {S::Nudging, true},
         {S::Idle, true},
         {S::Idle, true}},
    };
    for (size_t s = 0; s < kStates.size(); ++s)
        for (size_t e = 0; e < kEvents.size(); ++e)
            EXPECT_EQ(after(kStates[s], kEvents[e]), expected[s][e]) << "state " << s << ", event " << e;
}

TEST(DragMachine, CarryingIsWhatTheUserSeesAsSuch) {
    for (const State state : kStates) EXPECT_EQ(in(state).carrying(), state != State::Idle && state != State::Pressed);
}

TEST(DragMachine, APressThatWandersLessThanTheThresholdIsAClick) {
    DragMachine m = machine();
    m.press(kHome, {3, 0});
    EXPECT_FALSE(m.move({3 + kThreshold - 1, 0}, true));
    EXPECT_EQ(m.state(), State::Pressed);
    EXPECT_TRUE(m.move({3 + kThreshold, 0}, true));
    EXPECT_EQ(m.state(), State::Dragging);
}

TEST(DragMachine, TheGripIsKeptAndTheDropIsOneCarry) {
    DragMachine m = machine();
    m.press(kHome, {3, 0}); // gripped 30 mm east of its middle
    ASSERT_TRUE(m.move({203, 0}, false));
    const auto drop = m.release();
    ASSERT_TRUE(drop);
    EXPECT_EQ(drop->colony, kHive);
    EXPECT_EQ(drop->from, (MmPoint{0, 0}));
    EXPECT_EQ(drop->to, (MmPoint{2000, 0}));
    EXPECT_FALSE(drop->blocked());
    EXPECT_FALSE(m.release()) << "one drop, one carry";
}

TEST(DragMachine, ItSnapsUnlessToldNotTo) {
    DragMachine m = machine();
    m.press(kHome, {0, 0});
    EXPECT_EQ(m.move({113, 0}, true)->to, (MmPoint{1000, 0}));
    EXPECT_EQ(m.move({113, 0}, false)->to, (MmPoint{1130, 0}));
}

TEST(DragMachine, WhereAnotherStandsIsMarkedAndReturned) {
    DragMachine m = machine();
    m.press(kHome, {0, 0});
    EXPECT_EQ(m.move({300, 0}, true)->blockedBy, kOther);
    const auto drop = m.release();
    ASSERT_TRUE(drop);
    EXPECT_EQ(drop->blockedBy, kOther);
    EXPECT_FALSE(drop->swap);
}

TEST(DragMachine, SwappingIsAskedForAsLongAsItsKeyIsDown) {
    DragMachine m = machine();
    m.press(kHome, {0, 0});
    EXPECT_TRUE(m.move({300, 0}, true, true)->swap);
    EXPECT_FALSE(m.move({301, 0}, true, false)->swap);
    EXPECT_TRUE(m.move({300, 0}, true, true)->swap);
    EXPECT_TRUE(m.release()->swap);
}

TEST(DragMachine, BackHomeIsNoEdit) {
    DragMachine m = machine();
    m.press(kHome, {0, 0});
    m.move({200, 0}, true);
    m.move({4, 0}, true);
    EXPECT_FALSE(m.release());
}

TEST(DragMachine, OutsideTheDrawingTheyStayWhereTheyStoodUnlessOverAYard) {
    DragMachine m = machine();
    m.press(kHome, {0, 0});
    m.move({200, 0}, true);
    const auto out = m.moveOutside(std::nullopt);
    EXPECT_EQ(out->to, out->from);
    EXPECT_TRUE(out->goesNowhere());
    const auto over = m.moveOutside(kYard);
    EXPECT_EQ(over->yard, kYard);
    EXPECT_FALSE(over->goesNowhere());
    EXPECT_FALSE(m.move({200, 0}, true)->yard) << "back on the drawing";
    m.moveOutside(kYard);
    const auto drop = m.release();
    ASSERT_TRUE(drop);
    EXPECT_EQ(drop->yard, kYard);
}

TEST(DragMachine, SeveralKeepTheirLayout) {
    DragMachine m = machine();
    const Picked with[] = {{kHive, {0, 0}}, {kWith, {1000, 700}}};
    m.press(kHome, {0, 0}, with);
    const auto carry = m.move({200, 0}, true, true);
    ASSERT_TRUE(carry && carry->several());
    ASSERT_EQ(carry->others.size(), 1u) << "the gripped one is not among them";
    EXPECT_EQ(carry->others.front().to, (MmPoint{3000, 700}));
    EXPECT_FALSE(carry->swap) << "only two change places";
    EXPECT_EQ(carry->all().size(), 2u);
    EXPECT_FALSE(carry->blocked());
}

TEST(DragMachine, OneOfSeveralThatCannotStandThereBarsAll) {
    DragMachine m = machine();
    const Picked with[] = {{kWith, {1000, 0}}};
    m.press(kHome, {0, 0}, with);
    const auto carry = m.move({200, 0}, true);
    EXPECT_FALSE(carry->blockedBy);
    EXPECT_EQ(carry->others.front().blockedBy, kOther);
    EXPECT_TRUE(carry->blocked());
    DragMachine own = machine();
    const Picked all[] = {{kOther, {3000, 0}}};
    own.press(kHome, {0, 0}, all);
    EXPECT_FALSE(own.move({300, 0}, true)->blocked()) << "to where one of them stands";
}

TEST(DragMachine, AbortFromEachStateLeavesNothing) {
    for (const State state : kStates) {
        DragMachine m = in(state);
        EXPECT_EQ(m.abort(), state != State::Idle);
        EXPECT_EQ(m.state(), State::Idle);
        EXPECT_FALSE(m.release());
    }
}

TEST(DragMachine, ABurstOfKeysIsOneCarry) {
    DragMachine m = machine();
    const Picked with[] = {{kWith, {1000, 0}}};
    m.nudge(kHome, {100, 0}, with);
    m.nudge(kHome, {100, 0}, with);
    EXPECT_EQ(m.nudge(kHome, {0, -10}, with).to, (MmPoint{200, -10}));
    const auto drop = m.release();
    ASSERT_TRUE(drop);
    EXPECT_EQ(drop->to, (MmPoint{200, -10}));
    EXPECT_EQ(drop->others.front().to, (MmPoint{1200, -10}));
    EXPECT_EQ(m.nudge(kHome, {100, 0}).to, (MmPoint{100, 0})) << "another burst begins where it stands";
}

} // namespace
