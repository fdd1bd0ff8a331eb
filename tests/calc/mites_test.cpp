#include "core/rules/calc/binomial.h"
#include "core/rules/calc/mites.h"

#include "tests/calc/published.h"
#include "tests/calc/sources.h"

#include <vector>

// Mites per 100 bees, of a colony and of a yard.

namespace {

using namespace core::rules::calc;

TEST(Mites, PerHundredBees) {
    // Printed with the counts is 14.3, which is wrong: 4300 / 310 = 13.87.
    expectPublished({{kVarroaChapter, mitesPerHundred({43, 310}), 4300.0 / 310, 0}});
    EXPECT_NEAR(mitesPerHundred({43, 310}), 13.87, 0.005);
    EXPECT_EQ(mitesPerHundred({0, 300}), 0);
}

TEST(Mites, ADay) { expectPublished({{kBuckfastClub, mitesADay(20, 5), 4.0, 0}}); }

TEST(Mites, IntervalIsTheExactOnePerHundred) {
    const auto got = mitesInterval({43, 310});
    ASSERT_TRUE(got);
    EXPECT_NEAR(got->low, 10.22, 0.005); // scipy 1.10.1, binomtest(43, 310), method "exact"
    EXPECT_NEAR(got->high, 18.23, 0.005);
    EXPECT_GT(mitesInterval({0, 300})->high, 1.2); // no mite found is not "no mites"
    EXPECT_TRUE(mitesInterval({300, 300}));
    EXPECT_FALSE(mitesInterval({301, 300})) << "more mites than bees";
}

// Source: own calculation; 2, 4 and 6 in 100 have the mean 4 and the standard error 2/√3; t of 2 degrees is 4.303:
// 4 ± 4.97, below 0 cut off.
TEST(YardMites, MeanOfColoniesWithItsInterval) {
    const MiteSample samples[] = {{6, 300}, {12, 300}, {18, 300}};
    const auto yard = yardMites(samples, 12);
    ASSERT_TRUE(yard && yard->interval);
    EXPECT_EQ(yard->colonies, 3);
    EXPECT_NEAR(yard->mean, 4, 1e-12);
    EXPECT_EQ(yard->highest, 6);
    EXPECT_EQ(yard->interval->low, 0);
    EXPECT_NEAR(yard->interval->high, 8.97, 0.005);
    EXPECT_FALSE(yard->enough);
}

// Each colony weighs alike, whatever its sample: own calculation, (10 + 1) / 2, not 13 of 400.
TEST(YardMites, SamplesOfDifferentSizeWeighAlike) {
    const MiteSample samples[] = {{10, 100}, {3, 300}};
    EXPECT_NEAR(yardMites(samples, 2)->mean, 5.5, 1e-12);
}

TEST(YardMites, NeverNarrowerThanTheExactIntervalOfAllTheBees) {
    const MiteSample none[] = {{0, 300}, {0, 300}, {0, 300}};
    const auto yard = yardMites(none, 3);
    EXPECT_EQ(yard->interval->low, 0);
    EXPECT_EQ(yard->interval->high, 100 * exactInterval(0, 900).high);
    const MiteSample alike[] = {{9, 300}, {9, 300}};
    EXPECT_EQ(*yardMites(alike, 2)->interval,
              (Range{100 * exactInterval(18, 600).low, 100 * exactInterval(18, 600).high}));
}

TEST(YardMites, OneColonyIsNoYard) {
    const MiteSample one[] = {{9, 300}};
    EXPECT_FALSE(yardMites(one, 5)->interval);
    EXPECT_FALSE(yardMites({}, 5));
}

TEST(YardMites, EightColoniesAreEnoughOrAllOfASmallerYard) {
    expectPublished({{kLee, double(kColoniesToSample), 8, 0}});
    const auto enough = [](int sampled, int inYard) {
        return yardMites(std::vector<MiteSample>(static_cast<size_t>(sampled), {3, 300}), inYard)->enough;
    };
    EXPECT_FALSE(enough(7, 40));
    EXPECT_TRUE(enough(8, 40));
    EXPECT_TRUE(enough(8, 4000));
    EXPECT_TRUE(enough(3, 3));
    EXPECT_FALSE(enough(2, 3));
}

} // namespace
