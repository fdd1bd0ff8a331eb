#include "core/rules/calc/binomial.h"
#include "core/rules/calc/mites_change.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

// What became of the rate of the same colonies. Where no source stands beside a check: own calculation, by hand.

namespace {

using namespace core::rules::calc;

// Source: Student, The probable error of a mean, Biometrika 6, 1908, table of the additional hours of sleep, from
// memory; the interval of the mean of the ten differences as R prints it for its data set `sleep`, paired: 0.7001142 to
// 2.4598858, mean 1.58. The hours are put into a thousand bees each, two up so that none is below zero: differences
// stay what they were.
TEST(MitesChange, ManyColoniesByStudentsOwnTable) {
    const int before[] = {27, 4, 18, 8, 19, 54, 57, 28, 20, 40};
    const int after[] = {39, 28, 31, 21, 19, 64, 75, 36, 66, 54};
    std::vector<WashedTwice> all;
    for (size_t i = 0; i < 10; ++i) all.push_back({{before[i], 1000}, {after[i], 1000}});
    const auto got = mitesChange(all);
    ASSERT_TRUE(got && got->interval);
    EXPECT_EQ(got->colonies, 10);
    EXPECT_NEAR(got->change, 1.58, 1e-9);
    EXPECT_NEAR(got->interval->low, 0.7001142, 1e-6);
    EXPECT_NEAR(got->interval->high, 2.4598858, 1e-6);
    EXPECT_EQ(got->said, Change::Rose);
    for (WashedTwice& w : all) std::swap(w.before, w.after);
    EXPECT_EQ(mitesChange(all)->said, Change::Fell);
    EXPECT_NEAR(mitesChange(all)->interval->high, -0.7001142, 1e-6);
}

// Squared and added by hand: √((p₂ − l₂)² + (u₁ − p₁)²) of the exact intervals.
TEST(MitesChange, OneColonyByTheIntervalsOfItsTwoWashes) {
    const WashedTwice one[] = {{{30, 300}, {3, 300}}};
    const auto got = mitesChange(one);
    ASSERT_TRUE(got && got->interval);
    const Range b = exactInterval(30, 300);
    const Range a = exactInterval(3, 300);
    EXPECT_NEAR(got->change, -9, 1e-12);
    EXPECT_NEAR(got->interval->low, -9 - 100 * std::sqrt(std::pow(0.01 - a.low, 2) + std::pow(b.high - 0.1, 2)), 1e-9);
    EXPECT_NEAR(got->interval->high, -9 + 100 * std::sqrt(std::pow(a.high - 0.01, 2) + std::pow(0.1 - b.low, 2)), 1e-9);
    EXPECT_EQ(got->before.interval, mitesInterval({30, 300}));
    EXPECT_EQ(got->said, Change::Fell) << "2.9 lies below 6.9";
}

TEST(MitesChange, OfOnePairWhoseIntervalsMeetNothingIsSaid) {
    // 12 of 300: 2.1 to 6.9; 2 of 300: 0.1 to 2.4. They meet, though the interval of the change lies below 0.
    const WashedTwice one[] = {{{12, 300}, {2, 300}}};
    const auto got = mitesChange(one);
    EXPECT_LT(got->interval->high, 0);
    EXPECT_EQ(got->said, Change::Open);
    const WashedTwice none[] = {{{1, 300}, {0, 300}}};
    EXPECT_EQ(mitesChange(none)->said, Change::Open) << "from one mite to none";
}

TEST(MitesChange, NeverSurerThanTheirBeesTogether) {
    // Both fell by exactly 1 in 100: no spread between them, yet 6 mites of 200 bees and 4 are chance.
    const WashedTwice two[] = {{{3, 100}, {2, 100}}, {{3, 100}, {2, 100}}};
    const auto got = mitesChange(two);
    EXPECT_NEAR(got->change, -1, 1e-12);
    EXPECT_LT(got->interval->low, -1);
    EXPECT_GT(got->interval->high, 0);
    EXPECT_EQ(got->said, Change::Open);
}

TEST(MitesChange, TwoColoniesThatDifferSayLittle) {
    // −1 and −9: the mean −5 has, with one degree of freedom, t 12.706: 5 ± 50.8.
    const WashedTwice two[] = {{{6, 300}, {3, 300}}, {{30, 300}, {3, 300}}};
    const auto got = mitesChange(two);
    EXPECT_NEAR(got->interval->high, -5 + 12.7062 * 4, 1e-3);
    EXPECT_EQ(got->said, Change::Open);
}

TEST(MitesChange, WithoutAColonyThereIsNone) {
    EXPECT_FALSE(mitesChange({}));
    const WashedTwice odd[] = {{{301, 300}, {3, 300}}};
    EXPECT_FALSE(mitesChange(odd)->interval) << "more mites than bees";
    EXPECT_EQ(mitesChange(odd)->said, Change::Open);
}

} // namespace
