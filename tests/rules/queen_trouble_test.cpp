#include "core/rules/explain.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Rule 4.7.9 (b): in the season for queen trouble, one that lacks a queen with one that has one.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

constexpr char kSummer[] = "2026-07-02";

PlanBook summer(const QString& queenOfA, const QString& queenOfB, const QString& framesOfB = "9") {
    PlanBook book = PlanBook().colony("A").colony("B", {{"x_m", "3"}});
    const auto see = [&](const char* label, const QString& frames, const QString& queen) {
        book.visit(label, kSummer,
                   {{"bees_top", frames}, {"queen", queen}, {"brood_frames", "4"}, {"brood_checked", "4"}});
    };
    see("A", "5", queenOfA);
    see("B", framesOfB, queenOfB);
    return book;
}

TEST(QueenTrouble, InSummerAColonyWithoutAQueenGoesToOneWithAQueen) {
    for (const char* lacking : {"none", "drone-layer"}) {
        const PlanBook book = summer(lacking, "eggs");
        const Snapshot s = book.on(kSummer);
        const Plan plan = book.plan(kSummer);
        ASSERT_EQ(plan.unions.size(), 1U) << lacking;
        const Union& u = plan.unions[0];
        EXPECT_EQ(unionsOf(s, plan), "A>B") << "the weaker is carried";
        EXPECT_EQ(u.queen, QueenPlan::KeepHost);
        const QString steps = u.steps.join(u' ');
        EXPECT_EQ(steps.contains(QStringLiteral("remove")), std::string(lacking) == "drone-layer")
            << steps.toStdString();
        EXPECT_TRUE(plan.unresolved.empty());
        EXPECT_EQ(plan.totals.gain, u.gain);
        EXPECT_GE(u.gain, 1);
    }
}

TEST(QueenTrouble, TheQueenOfTheWeakerIsKeptWhereTheStrongerLacksOne) {
    const PlanBook book = summer("eggs", "none");
    const Plan plan = book.plan(kSummer);
    ASSERT_EQ(plan.unions.size(), 1U);
    EXPECT_EQ(plan.unions[0].queen, QueenPlan::KeepMoved);
}

TEST(QueenTrouble, NoUnionForStrengthInSummer) {
    EXPECT_EQ(unionsOf(summer("eggs", "eggs").on(kSummer), summer("eggs", "eggs").plan(kSummer)), "");
    EXPECT_EQ(against(summer("eggs", "eggs").on(kSummer), "A", "B"), "9 10");
}

TEST(QueenTrouble, NeitherToAVirginNorToAnotherWithoutAQueen) {
    EXPECT_TRUE(summer("none", "virgin").plan(kSummer).unions.empty());
    const Plan both = summer("none", "none").plan(kSummer);
    EXPECT_TRUE(both.unions.empty());
    ASSERT_EQ(both.unresolved.size(), 2U);
    for (const UnresolvedColony& u : both.unresolved) EXPECT_EQ(u.why, Unresolved::NoPartner);
}

TEST(QueenTrouble, OnlyInItsSeason) {
    PlanBook book = PlanBook().unchecked("A").unchecked("B", {{"x_m", "3"}});
    for (const char* label : {"A", "B"})
        book.visit(label, "2026-04-25",
                   {{"bees_top", "6"},
                    {"queen", label[0] == 'A' ? "none" : "eggs"},
                    {"brood_frames", "4"},
                    {"brood_checked", "4"}});
    EXPECT_TRUE(book.plan("2026-04-30").unions.empty());
    EXPECT_EQ(book.plan("2026-05-01").unions.size(), 1U) << "season.start";
}

} // namespace
