#include "core/rules/value.h"

#include <gtest/gtest.h>

// Rule 4.6 and the carry of 4.7.

namespace {

using namespace core;
using core::rules::carryCost;
using core::rules::ValueOf;

int valueAt(int quarters) { return ValueOf(Settings{})(Quarters{quarters}); }

// Source: own calculation, (p · (1000 + d) + 500) div 1000 by hand from the table of rule 4.6.
TEST(Value, AtWholeFrames) {
    const int expected[] = {0, 50, 120, 300, 480, 640, 750, 1148, 1584, 1720, 1840, 1856, 1868};
    for (int f = 0; f <= 12; ++f) EXPECT_EQ(valueAt(4 * f), expected[f]) << f << " frames";
}

// Source: own calculation. 5.25: p = (640·3 + 750 + 2) div 4 = 668, d = 0. 9.25: p = (905·3 + 920 + 2) div 4 = 909,
// d = (900·3 + 1000 + 2) div 4 = 925, E = (909·1925 + 500) div 1000 = 1750. 9.75: p = 916, d = 975, E = 1809.
TEST(Value, BetweenWholeFrames) {
    EXPECT_EQ(valueAt(21), 668);
    EXPECT_EQ(valueAt(37), 1750);
    EXPECT_EQ(valueAt(39), 1809);
    EXPECT_EQ(valueAt(1), (0 * 3 + 50 + 2) / 4);
}

TEST(Value, AboveTwelveFramesAsAtTwelve) {
    EXPECT_EQ(valueAt(47), 1866); // p = (928 + 934·3 + 2) div 4 = 933, d = 1000
    EXPECT_EQ(valueAt(48), 1868);
    EXPECT_EQ(valueAt(49), 1868);
    EXPECT_EQ(valueAt(400), 1868);
}

TEST(Value, FollowsTheTablesOfTheBook) {
    Settings settings;
    settings.winter.fill(1000);
    settings.divide.fill(500);
    EXPECT_EQ(ValueOf(settings)(Quarters{1}), 1500);
}

qint64 carry(qint32 dx, qint32 dy, qint64 millionths = 1'000'000) {
    return carryCost({0, 0}, {dx, dy}, Millionths{millionths});
}

// Source: own calculation. Half up, exactly: 2.499 m -> 2, 2.5 m -> 3; 3-4-5 triangles have whole lengths.
TEST(Carry, IsRoundedHalfUpExactly) {
    EXPECT_EQ(carry(0, 0), 0);
    EXPECT_EQ(carry(499, 0), 0);
    EXPECT_EQ(carry(500, 0), 1);
    EXPECT_EQ(carry(1499, 0), 1);
    EXPECT_EQ(carry(1500, 0), 2);
    EXPECT_EQ(carry(2499, 0), 2);
    EXPECT_EQ(carry(2500, 0), 3);
    EXPECT_EQ(carry(1500, 2000), 3); // 2.5 m
    EXPECT_EQ(carry(3000, 4000), 5);
    EXPECT_EQ(carry(-3000, -4000), 5);
}

// Source: own calculation. At 20 km the double of a distance still has room; the squares of 4·d²·p² do not fit in 64
// bits.
TEST(Carry, IsExactAtTheFarCornersOfAYard) {
    EXPECT_EQ(carryCost({-10'000'000, -10'000'000}, {10'000'000, 10'000'000}, {1'000'000}),
              28284); // 20 km · √2 = 28284.27 m
    EXPECT_EQ(carry(19'999'500, 0), 20000);
    EXPECT_EQ(carry(19'999'499, 0), 19999);
    EXPECT_EQ(carryCost({-10'000'000, 0}, {10'000'000, 0}, {100'000'000}), 2'000'000);
}

// Source: own calculation. Half a thousandth a metre: 1 m costs ½, rounded up to 1; 0.999 m costs 0.4995.
TEST(Carry, FollowsItsSetting) {
    EXPECT_EQ(carry(1000, 0, 500'000), 1);
    EXPECT_EQ(carry(999, 0, 500'000), 0);
    EXPECT_EQ(carry(7000, 0, 0), 0);
    EXPECT_EQ(carry(1, 0, 500'000'000), 1); // 0.001 m · 500 = ½
    EXPECT_EQ(carry(1, 0, 499'999'999), 0);
}

} // namespace
