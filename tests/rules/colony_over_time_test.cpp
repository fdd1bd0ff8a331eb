#include "core/rules/colony_over_time.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace core;
using namespace core::rules;

Visit visitOn(int month, int day) {
    Visit v;
    v.colony = {1};
    v.day = dayOf(2026, month, day);
    return v;
}

Lineage unionInto(qint64 from, int month, int day) {
    Lineage l;
    l.day = dayOf(2026, month, day);
    l.how = LineageHow::United;
    l.colony = {from};
    l.into = {1};
    return l;
}

Colony colonyOf(int boxes) {
    Colony c;
    c.id = {1};
    c.since = dayOf(2026, 4, 1);
    c.broodBoxes = boxes;
    return c;
}

// Rule 4.0, boxes: the latest of visits that say so and unions, at a tie the union; else what it began with.
TEST(ColonyOverTime, BoxesFollowVisitsAndUnions) {
    std::vector<Visit> visits{visitOn(4, 10), visitOn(5, 10), visitOn(6, 10), visitOn(7, 10), visitOn(8, 10)};
    visits[1].boxes = 2;
    visits[2].boxes = 1;
    visits[3].boxes = 1; // and a union that day
    const std::vector<Lineage> lineage{unionInto(2, 7, 10)};
    EXPECT_EQ(boxesOverTime(colonyOf(1), visits, lineage), (std::vector<int>{1, 2, 1, 2, 2}));
    const std::vector<Lineage> twice{unionInto(2, 4, 20), unionInto(3, 4, 20)};
    EXPECT_EQ(boxesOverTime(colonyOf(1), std::span(visits).first(2), twice), (std::vector<int>{1, 2}));
    Lineage away = unionInto(2, 4, 20);
    std::swap(away.colony, away.into); // it went, nothing came
    EXPECT_EQ(boxesOverTime(colonyOf(1), std::span(visits).first(1), std::vector{away}), (std::vector<int>{1}));
}

// Rule 4.1: (t + b + 1) div 2 in quarter frames; two boxes of which one is counted have no strength.
TEST(ColonyOverTime, StrengthIsThatOfTheRule) {
    std::vector<Visit> visits{visitOn(4, 10), visitOn(5, 10), visitOn(6, 10), visitOn(7, 10)};
    visits[0].beesTop = Quarters{13};
    visits[0].beesBottom = Quarters{10}; // (13 + 10 + 1) div 2 = 12
    visits[2].beesTop = Quarters{20};
    visits[2].upperBeesBottom = Quarters{9};
    visits[3].beesTop = Quarters{8}; // the upper box is not counted
    const auto all = strengthOverTime(visits, std::vector{1, 1, 2, 2}, Settings{});
    ASSERT_EQ(all.size(), 3u) << "a visit without a count has no point";
    EXPECT_EQ(all[0].all, Quarters{12});
    EXPECT_EQ(all[1].all, Quarters{29});
    EXPECT_EQ(all[1].lower, Quarters{20});
    EXPECT_EQ(all[1].upper, Quarters{9});
    EXPECT_EQ(all[2].all, std::nullopt);
    Settings top;
    top.strengthJudge = StrengthJudge::Top;
    EXPECT_EQ(strengthOverTime(visits, std::vector{1, 1, 2, 2}, top)[0].all, Quarters{13});
}

TEST(ColonyOverTime, StoresOfTwoBoxesNeedBoth) {
    std::vector<Visit> visits{visitOn(4, 10), visitOn(5, 10), visitOn(6, 10)};
    visits[0].stores = Quarters{6};
    visits[1].stores = Quarters{6};
    visits[1].upperStores = Quarters{4};
    visits[2].upperStores = Quarters{4};
    const auto all = storesOverTime(visits, std::vector{1, 2, 2});
    ASSERT_EQ(all.size(), 3u);
    EXPECT_EQ(all[0].all, Quarters{6});
    EXPECT_EQ(all[1].all, Quarters{10});
    EXPECT_EQ(all[2].all, std::nullopt);
}

TEST(ColonyOverTime, WeightTellsSupersAndQueenWhatWasSeen) {
    std::vector<Visit> visits{visitOn(4, 10), visitOn(5, 10)};
    visits[0].gross = Decagrams{2950};
    visits[1].gross = Decagrams{5120};
    visits[1].supers = 2;
    visits[1].queen = QueenSeen::Eggs;
    const auto weight = weightOverTime(visits);
    ASSERT_EQ(weight.size(), 2u);
    EXPECT_EQ(weight[0].supers, 0);
    EXPECT_EQ(weight[1].supers, 2);
    const auto queen = queenOverTime(visits);
    ASSERT_EQ(queen.size(), 1u);
    EXPECT_EQ(queen[0].seen, QueenSeen::Eggs);
}

TEST(ColonyOverTime, MitesComeWithTheirExactInterval) {
    std::vector<Visit> visits{visitOn(4, 10), visitOn(5, 10), visitOn(6, 10)};
    visits[0].mites = 0;
    visits[0].miteSample = 300;
    visits[1].mites = 3;
    visits[1].miteSample = 2; // more mites than bees
    const auto all = mitesOverTime(visits);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].perHundred, 0);
    ASSERT_TRUE(all[0].interval);
    EXPECT_EQ(all[0].interval->low, 0);
    // own calculation, Clopper and Pearson in closed form: none of n has the upper end 1 - 0.025^(1/n)
    EXPECT_NEAR(all[0].interval->high, 100 * (1 - std::pow(0.025, 1.0 / 300)), 1e-6);
    EXPECT_EQ(all[1].perHundred, 150);
    EXPECT_FALSE(all[1].interval);
}

} // namespace
