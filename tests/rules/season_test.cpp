#include "core/rules/season.h"

#include <gtest/gtest.h>

namespace core::rules {
namespace {

// Source: own calculation, the half year of rule 4.0 counted by hand.
TEST(Season, BothEndsAreIncluded) {
    const MonthDay from{8, 20};
    const MonthDay to{10, 20};
    EXPECT_FALSE(inSeason(dayOf(2026, 8, 19), from, to, false));
    EXPECT_TRUE(inSeason(dayOf(2026, 8, 20), from, to, false));
    EXPECT_TRUE(inSeason(dayOf(2026, 10, 20), from, to, false));
    EXPECT_FALSE(inSeason(dayOf(2026, 10, 21), from, to, false));
}

TEST(Season, MovesByHalfAYearInTheSouth) {
    const MonthDay from{8, 20};
    const MonthDay to{10, 20};
    EXPECT_FALSE(inSeason(dayOf(2026, 2, 19), from, to, true));
    EXPECT_TRUE(inSeason(dayOf(2026, 2, 20), from, to, true));
    EXPECT_TRUE(inSeason(dayOf(2026, 4, 20), from, to, true));
    EXPECT_FALSE(inSeason(dayOf(2026, 4, 21), from, to, true));
    EXPECT_FALSE(inSeason(dayOf(2026, 9, 1), from, to, true));
}

TEST(Season, RunsOverTheNewYearWhereItWouldEndBeforeItsStart) {
    const MonthDay from{5, 1};
    const MonthDay to{10, 20};
    EXPECT_FALSE(inSeason(dayOf(2026, 10, 31), from, to, true));
    EXPECT_TRUE(inSeason(dayOf(2026, 11, 1), from, to, true));
    EXPECT_TRUE(inSeason(dayOf(2027, 1, 1), from, to, true));
    EXPECT_TRUE(inSeason(dayOf(2027, 4, 20), from, to, true));
    EXPECT_FALSE(inSeason(dayOf(2027, 4, 21), from, to, true));
}

TEST(Season, ADayTheMonthLacksBecomesItsLast) {
    EXPECT_EQ(dayInYear(2026, {8, 31}, true), dayOf(2026, 2, 28));
    EXPECT_EQ(dayInYear(2028, {8, 31}, true), dayOf(2028, 2, 29));
    EXPECT_EQ(dayInYear(2026, {5, 31}, true), dayOf(2026, 11, 30));
    EXPECT_EQ(dayInYear(2026, {2, 29}, false), dayOf(2026, 2, 28));
    EXPECT_EQ(dayInYear(2026, {12, 31}, true), dayOf(2026, 6, 30));
}

TEST(Season, LatestStartLooksBackAtMostAYear) {
    EXPECT_EQ(latestStart(dayOf(2026, 5, 1), {5, 1}, false), dayOf(2026, 5, 1));
    EXPECT_EQ(latestStart(dayOf(2026, 4, 30), {5, 1}, false), dayOf(2025, 5, 1));
    EXPECT_EQ(latestStart(dayOf(2026, 10, 31), {5, 1}, true), dayOf(2025, 11, 1));
    EXPECT_EQ(latestStart(dayOf(2026, 11, 1), {5, 1}, true), dayOf(2026, 11, 1));
}

TEST(Season, MonthsAreNamedAsInTheNorth) {
    EXPECT_EQ(northernMonth(dayOf(2026, 7, 31), false), 7);
    EXPECT_EQ(northernMonth(dayOf(2026, 1, 31), true), 7);
    EXPECT_EQ(northernMonth(dayOf(2026, 12, 1), true), 6);
}

} // namespace
} // namespace core::rules
