#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Rule 4.8: roles, boxes, queens and steps. Source: own calculation from the rules' text.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

Union onlyUnion(const PlanBook& book) {
    const Plan plan = book.plan(kFall);
    EXPECT_EQ(plan.unions.size(), 1U);
    return plan.unions.empty() ? Union{} : plan.unions.front();
}

QString movedIn(const PlanBook& book) {
    const Snapshot s = book.on(kFall);
    return s.colony(onlyUnion(book).moved).label;
}

PlanBook pair(const char* a, const char* b, Cells cellsA = {}, Cells cellsB = {}) {
    return PlanBook().colony("A").colony("B").bees("A", a, cellsA).bees("B", b, cellsB);
}

TEST(Roles, TheOneWithFewerBeesIsMoved) {
    EXPECT_EQ(movedIn(pair("3", "3.25")), "A");
    EXPECT_EQ(movedIn(pair("3.25", "3")), "B");
    EXPECT_EQ(movedIn(pair("3", "3.25", {}, {{"queen", "none"}})), "A");
}

TEST(Roles, AtATieTheOneWithoutAQueen) {
    EXPECT_EQ(movedIn(pair("4", "4", {{"queen", "none"}, {"gross_kg", "40"}}, {{"gross_kg", "20"}})), "A");
}

TEST(Roles, ThenTheLighterWhereBothWereWeighed) {
    EXPECT_EQ(movedIn(pair("4", "4", {{"gross_kg", "20.00"}}, {{"gross_kg", "20.01"}})), "A");
    EXPECT_EQ(movedIn(pair("4", "4", {{"gross_kg", "20"}})), "B"); // only one: by label
}

TEST(Roles, ThenTheLaterLabel) {
    EXPECT_EQ(movedIn(pair("4", "4")), "B");
    EXPECT_EQ(movedIn(pair("4", "4", {{"gross_kg", "20"}}, {{"gross_kg", "20"}})), "B");
    PlanBook natural;
    natural.colony("A10").colony("A9").bees("A10", "4").bees("A9", "4");
    EXPECT_EQ(movedIn(natural), "A10");
}

TEST(Roles, TheBoxOrderIsASetting) {
    const Union better = onlyUnion(pair("3", "4"));
    EXPECT_EQ(better.lower, better.moved);
    EXPECT_EQ(better.upper, better.host);
    const Union weaker = onlyUnion(pair("3", "4").set("order", "weaker-on-top"));
    EXPECT_EQ(weaker.lower, weaker.host);
    EXPECT_EQ(weaker.upper, weaker.moved);
}

TEST(Roles, QueensAreKeptLeftOrRemoved) {
    EXPECT_EQ(onlyUnion(pair("3", "4")).queen, QueenPlan::LeaveBoth);
    EXPECT_EQ(onlyUnion(pair("3", "4").set("queen.weaker", "remove")).queen, QueenPlan::RemoveMoved);
    EXPECT_EQ(onlyUnion(pair("3", "4", {{"queen", "none"}})).queen, QueenPlan::KeepHost);
    EXPECT_EQ(onlyUnion(pair("3", "4", {}, {{"queen", "drone-layer"}})).queen, QueenPlan::KeepMoved);
    EXPECT_EQ(onlyUnion(pair("3", "4", {{"queen", "none"}}).set("queen.weaker", "remove")).queen, QueenPlan::KeepHost);
}

TEST(Roles, TheReasonSaysWhyAQueenIsNone) {
    const auto reasons = [](const char* queen) {
        return onlyUnion(pair("3", "4", {{"queen", queen}})).because.join(' ');
    };
    EXPECT_TRUE(reasons("none").contains("A has no queen; B's is kept."));
    EXPECT_TRUE(reasons("drone-layer").contains("A's queen lays only drones; B's is kept."));
}

TEST(Roles, TheStandIsTheHosts) {
    PlanBook book;
    book.colony("A", {{"x_m", "0"}, {"heading_deg", "90"}})
        .colony("B", {{"x_m", "3"}, {"y_m", "4"}, {"heading_deg", "270"}});
    const Union u = onlyUnion(book.bees("A", "3").bees("B", "4"));
    EXPECT_EQ(u.stand, "S2");
    EXPECT_EQ(u.headingDeg, 270);
    EXPECT_EQ(u.carryTenths, 50);
}

TEST(Steps, ADroneLayersQueenIsRemovedBeforeAnythingElse) {
    const QStringList steps = onlyUnion(pair("3", "4", {{"queen", "drone-layer"}})).steps;
    EXPECT_EQ(steps.front(), "Before anything else, find and remove the drone-laying queen of A.");
    EXPECT_FALSE(onlyUnion(pair("3", "4", {{"queen", "none"}})).steps.front().contains("queen"));
}

TEST(Steps, AQueenToKeepThatNobodySawIsLookedForFirst) {
    const QStringList steps = onlyUnion(pair("3", "4", {{"queen", "none"}}, {{"queen", "unknown"}})).steps;
    EXPECT_TRUE(steps.front().startsWith("Before anything else, look for the queen of B"))
        << steps.front().toStdString();
    const QStringList both = onlyUnion(pair("3", "4", {}, {{"queen", "unknown"}})).steps;
    EXPECT_FALSE(both.join(' ').contains("look for the queen"));
}

TEST(Steps, TwoBoxesComeDownToOneFirst) {
    PlanBook book;
    book.colony("A", {{"brood_boxes", "2"}}).colony("B", {{"brood_boxes", "2"}});
    book.bees("A", "2", {{"upper_bees_top", "1"}}).bees("B", "2", {{"upper_bees_top", "2"}});
    const Union u = onlyUnion(book);
    EXPECT_EQ(u.consolidate.size(), 2U);
    EXPECT_LT(u.consolidate[0], u.consolidate[1]);
    EXPECT_TRUE(u.steps.front().startsWith("Bring A down to one box"));
    EXPECT_EQ(book.plan(kFall).totals.boxesFreed, 2);
}

} // namespace
