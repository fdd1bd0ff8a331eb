#include "core/rules/calc/binomial.h"
#include "core/rules/calc/loss.h"

#include "tests/calc/published.h"
#include "tests/calc/sources.h"

// Losses: counts, rates, intervals.

namespace {

using namespace core::rules::calc;

const WinterLoss k2016{32048, 18587, 0};
const WinterLoss k2017{60227, 21887, 6903};
const WinterLoss k2018{54525, 26379, 8220};
const WinterLoss k2019{79146, 29912, 13895};

double percent(qint64 lost, qint64 of) {
    const Counted one[] = {{lost, of}};
    return 100 * lossRates(one)->overall.share();
}

TEST(Loss, OverallRatesOfFourWinters) {
    expectPublished({
        {kBrodschneider2016, percent(k2016.lost(), 421238), 12.0, 0.05},
        {kBrodschneider2018, percent(k2017.lost(), 425762), 20.9, 0.05},
        {kGray2019, percent(k2018.lost(), 544879), 16.4, 0.05},
        {kGray2020, percent(k2019.lost(), 738233), 16.7, 0.05},
        {kGrayPeterson, percent(158, 500), 31.6, 0.05},
    });
}

// The three kinds are summed as counts: their rounded percents make 20.8, not 20.9.
TEST(Loss, KindsOfOneWinter) {
    expectPublished({
        {kBrodschneider2018, percent(k2017.queenProblems, 425762), 5.1, 0.05},
        {kBrodschneider2018, percent(k2017.dead, 425762), 14.1, 0.05},
        {kBrodschneider2018, percent(k2017.disaster, 425762), 1.6, 0.05},
    });
    EXPECT_EQ(k2017.lost(), 89017);
}

/// How far an end of the plain exact interval lies outside the printed one, which is wider: 0 where inside.
double outside(qint64 lost, qint64 of, double low, double high) {
    const Range plain = exactInterval(lost, of);
    return std::max({0.0, low - 100 * plain.low, 100 * plain.high - high});
}

// The printed intervals are those of the survey's model over many keepers (their counts are not printed): wider than
// the plain binomial one, on both sides.
TEST(Loss, PrintedIntervalsAreWiderThanThePlainOne) {
    expectPublished({
        {kBrodschneider2016, outside(k2016.lost(), 421238, 11.8, 12.2), 0, 0},
        {kBrodschneider2018, outside(k2017.lost(), 425762, 20.6, 21.3), 0, 0},
        {kGray2019, outside(k2018.lost(), 544879, 16.1, 16.6), 0, 0},
        {kGray2020, outside(k2019.lost(), 738233, 16.4, 16.9), 0, 0},
    });
}

// Source: own calculation, the plain interval by the normal formula (z = 1.96): 20.79 to 21.03.
TEST(Loss, PlainIntervalOfAWinter) {
    const Range plain = exactInterval(89017, 425762);
    EXPECT_NEAR(100 * plain.low, 20.79, 0.005);
    EXPECT_NEAR(100 * plain.high, 21.03, 0.005);
}

// Source: own calculation; keepers that differ make it wider, whatever the sum.
TEST(Loss, KeepersThatDifferWidenTheInterval) {
    const Counted alike[] = {{10, 100}, {11, 100}, {9, 100}, {10, 100}};
    const Counted differ[] = {{0, 100}, {35, 100}, {1, 100}, {4, 100}};
    const Range a = lossRates(alike)->overall.interval;
    const Range d = lossRates(differ)->overall.interval;
    EXPECT_LT(d.low, a.low);
    EXPECT_GT(d.high, a.high);
    EXPECT_GT(*lossRates(differ)->overall.spread, 10);
}

// Source: own calculation, three keepers 1/2, 0/10, 10/100.
TEST(Loss, OverallAverageAndMedian) {
    const Counted keepers[] = {{1, 2}, {0, 10}, {10, 100}, {0, 0}};
    const auto rates = lossRates(keepers);
    ASSERT_TRUE(rates);
    EXPECT_NEAR(100 * rates->overall.share(), 9.82, 0.005);
    EXPECT_NEAR(100 * rates->average, 20.00, 0.005);
    EXPECT_NEAR(100 * rates->median, 10.00, 0.005);
    const Counted two[] = {{1, 2}, {0, 10}};
    EXPECT_NEAR(lossRates(two)->median, 0.25, 1e-12);
    EXPECT_FALSE(lossRates({}));
}

// Source: own calculation, start 20, splits 6, bought 2, sold 3, end 21: 4 of 25.
TEST(Loss, ColoniesAtRisk) {
    const auto loss = lossOf({20, 6, 2, 3, 21});
    ASSERT_TRUE(loss);
    EXPECT_EQ(loss->found, 4);
    EXPECT_EQ(loss->of, 25);
    EXPECT_NEAR(percent(loss->found, loss->of), 16.00, 0.005);
    EXPECT_FALSE(lossOf({20, 6, 2, 3, 26})) << "more at the end than at risk";
    EXPECT_FALSE(lossOf({3, 0, 0, 3, 0})) << "none at risk";
    EXPECT_EQ(lossOf({3, 0, 0, 0, 3})->found, 0);
}

TEST(Loss, WholePercents) {
    expectPublished({
        {kNassMay2016, double(wholePercent(500020, 2824610)), 18, 0},    // United States, January to March 2015
        {kNassMay2016, double(wholePercent(255000, 1690000)), 15, 0},    // California, by the maximum
        {kNassMay2016, double(wholePercent(428800, 2594590)), 17, 0},    // United States, January to March 2016
        {kNassAugust2017, double(wholePercent(416100, 2619940)), 16, 0}, // the same, revised
    });
    EXPECT_EQ(wholePercent(85, 1000), 9); // a half goes up
    EXPECT_EQ(wholePercent(849, 10000), 8);
    EXPECT_EQ(wholePercent(0, 7), 0);
    EXPECT_EQ(wholePercent(7, 7), 100);
}

} // namespace
