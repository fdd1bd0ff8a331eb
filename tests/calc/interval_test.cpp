#include "core/rules/calc/binomial.h"
#include "core/rules/calc/clustered.h"
#include "core/rules/calc/student.h"

#include "tests/calc/reference.h"

#include <gtest/gtest.h>

#include <cmath>

// The intervals against other programs on seeded inputs: scipy 1.10.1 (binomtest, betainc, betaincinv, t) and
// statsmodels 0.13.5 (GLM, binomial, Pearson's X2), Debian 12; tests/data/reference/make_intervals.py made the file.

namespace {

using namespace core::rules::calc;

// Source: scipy 1.10.1, scipy.stats.binomtest(...).proportion_ci(method="exact").
TEST(Intervals, ExactIsScipys) {
    const auto rows = referenceExact();
    ASSERT_GT(rows.size(), 150u);
    for (const ExactRow& row : rows) {
        const Range got = exactInterval(row.found, row.of, row.level);
        EXPECT_NEAR(got.low, row.low, 1e-9) << row.found << " of " << row.of;
        EXPECT_NEAR(got.high, row.high, 1e-9) << row.found << " of " << row.of;
    }
}

// Source: scipy 1.10.1, scipy.special.betainc.
TEST(Intervals, IncompleteBetaIsScipys) {
    const auto rows = referenceBeta();
    ASSERT_GE(rows.size(), 100u);
    for (const BetaRow& row : rows)
        EXPECT_NEAR(incompleteBeta(row.x, row.a, row.b), row.below, 1e-10) << row.x << ' ' << row.a << ' ' << row.b;
}

// Source: scipy 1.10.1, scipy.special.betaincinv.
TEST(Intervals, StudentIsScipys) {
    const auto rows = referenceStudent();
    ASSERT_GE(rows.size(), 30u);
    for (const StudentRow& row : rows) EXPECT_NEAR(studentT(row.freedom, row.level) / row.t, 1, 1e-9) << row.freedom;
}

// Source: statsmodels 0.13.5, GLM with an intercept only, binomial, scale by X2; t from scipy 1.10.1.
TEST(Intervals, ClusteredIsStatsmodels) {
    const auto cases = referenceClustered();
    ASSERT_GE(cases.size(), 40u);
    int wide = 0;
    for (const ClusteredCase& c : cases) {
        const auto got = clusteredShare(c.groups);
        ASSERT_TRUE(got && got->spread);
        if (c.spread >= 1) {
            ++wide;
            EXPECT_NEAR(*got->spread / c.spread, 1, 1e-9);
            EXPECT_NEAR(got->interval.low, c.low, 1e-9);
            EXPECT_NEAR(got->interval.high, c.high, 1e-9);
        } else { // own choice: never narrower than by chance alone
            EXPECT_EQ(*got->spread, 1);
            EXPECT_LT(got->interval.low, c.low);
            EXPECT_GT(got->interval.high, c.high);
        }
    }
    EXPECT_GE(wide, 35);
    EXPECT_LT(wide, int(cases.size())) << "none with a spread below 1 was tried";
}

/// The chance of `from`..`to` found among n, summed term by term.
double chance(int from, int to, int n, double p) {
    double sum = 0;
    for (int k = from; k <= to; ++k)
        sum += std::exp(std::lgamma(n + 1.0) - std::lgamma(k + 1.0) - std::lgamma(n - k + 1.0) + k * std::log(p) +
                        (n - k) * std::log1p(-p));
    return sum;
}

// The definition itself: at each end the tail beyond what was found has 2.5 %. Source: own calculation, sums.
TEST(Intervals, TailsOfTheExactIntervalSumToTheirShare) {
    for (const int n : {1, 2, 7, 30, 300, 1000})
        for (int found = 0; found <= n; found += std::max(1, n / 11)) {
            const Range r = exactInterval(found, n);
            if (found > 0) {
                EXPECT_NEAR(chance(found, n, n, r.low), 0.025, 1e-9) << found << " of " << n;
            }
            if (found < n) {
                EXPECT_NEAR(chance(0, found, n, r.high), 0.025, 1e-9) << found << " of " << n;
            }
        }
}

TEST(Intervals, EndsOfTheExactInterval) {
    EXPECT_EQ(exactInterval(0, 300).low, 0);
    EXPECT_EQ(exactInterval(300, 300).high, 1);
    EXPECT_NEAR(exactInterval(0, 300).high, 1 - std::pow(0.025, 1 / 300.0), 1e-12); // own calculation
}

TEST(Intervals, OneGroupHasThePlainExactInterval) {
    const Counted one[] = {{158, 500}};
    const auto got = clusteredShare(one);
    ASSERT_TRUE(got);
    EXPECT_FALSE(got->spread);
    EXPECT_EQ(got->interval, exactInterval(158, 500));
    const Counted withEmpty[] = {{158, 500}, {0, 0}};
    EXPECT_EQ(clusteredShare(withEmpty)->interval, exactInterval(158, 500));
}

TEST(Intervals, AllOrNothingHasTheExactIntervalOfTheSums) {
    const Counted none[] = {{0, 10}, {0, 20}};
    const Counted all[] = {{10, 10}, {20, 20}};
    EXPECT_EQ(clusteredShare(none)->interval, exactInterval(0, 30));
    EXPECT_EQ(clusteredShare(all)->interval, exactInterval(30, 30));
    EXPECT_FALSE(clusteredShare({}));
    const Counted empty[] = {{0, 0}};
    EXPECT_FALSE(clusteredShare(empty));
}

} // namespace
