#include "core/rules/calc/binomial.h"
#include "core/rules/calc/mites.h"
#include "core/rules/calc/sample_size.h"

#include "tests/calc/published.h"
#include "tests/calc/sources.h"

#include <cmath>

// How many bees a mite sample needs.

namespace {

using namespace core::rules::calc;

TEST(SampleSize, ChanceToSeeNoMite) {
    expectPublished({
        {kOliver, 100 * chanceOfNone(1, 100), 36, 0.7},
        {kOliver, 100 * chanceOfNone(1, 300), 4.9, 0.05},
    });
    EXPECT_NEAR(100 * chanceOfNone(1, 100), 36.60, 0.005); // own calculation
}

// The printed sample for beekeepers, "about 300 bees", is what finds a mite at 1 in 100 with a chance of 95 %: 299.
TEST(SampleSize, BeesToFindAMite) {
    expectPublished({{kLee, double(*beesToFind(1)), 300, 1}});
    for (const double perHundred : {0.1, 1.0, 2.0, 3.0, 50.0, 99.0}) { // the smallest: own calculation
        const int bees = *beesToFind(perHundred);
        EXPECT_LE(chanceOfNone(perHundred, bees), 0.05) << perHundred;
        if (bees > 1) {
            EXPECT_GT(chanceOfNone(perHundred, bees - 1), 0.05) << perHundred;
        }
    }
    EXPECT_FALSE(beesToFind(0.01));
    EXPECT_EQ(beesToFind(1, 0.5), 69); // own calculation, ln 0.5 / ln 0.99 = 68.97
}

// Source: own calculation; the normal formula asks for 1118 bees at 3 in 100 to ± 1.
TEST(SampleSize, BeesForAWantedPrecision) {
    const int bees = *beesForPrecision(3, 1);
    EXPECT_GE(bees, 1118);
    EXPECT_LE(bees, 1250);
    for (const double perHundred : {0.5, 2.0, 3.0, 10.0, 40.0})
        for (const double within : {0.5, 1.0, 2.0}) {
            const auto n = beesForPrecision(perHundred, within);
            if (!n) continue;
            const Range r = exactInterval(std::llround(perHundred / 100 * *n), *n);
            EXPECT_LE(100 * (r.high - r.low), 2 * within);
            const Range before = exactInterval(std::llround(perHundred / 100 * (*n - 1)), *n - 1);
            EXPECT_GT(100 * (before.high - before.low), 2 * within) << perHundred << " ± " << within;
        }
    EXPECT_FALSE(beesForPrecision(3, 0.1)) << "more than the largest sample";
}

} // namespace
