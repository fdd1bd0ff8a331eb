#include "core/base/quantity.h"

#include <gtest/gtest.h>

#include <random>

using namespace core;

namespace {

TEST(Decimal, IsShownWithoutNeedlessZeros) {
    EXPECT_EQ(decimalText(325, 2), "3.25");
    EXPECT_EQ(decimalText(300, 2), "3");
    EXPECT_EQ(decimalText(5, 2), "0.05");
    EXPECT_EQ(decimalText(-5, 2), "-0.05");
    EXPECT_EQ(decimalText(0, 3), "0");
    EXPECT_EQ(decimalText(7, 0), "7");
    EXPECT_EQ(framesText({13}), "3.25");
    EXPECT_EQ(framesText({32}), "8");
    EXPECT_EQ(kilogramsText({3250}), "32.5");
    EXPECT_EQ(metresText({-2125}), "-2.125");
}

TEST(Decimal, ReadsBackWhatItShows) {
    std::mt19937_64 random(11); // seed: 11
    for (int i = 0; i < 20000; ++i) {
        const auto value = static_cast<qint64>(random() % 2'000'000'000) - 1'000'000'000;
        const int decimals = static_cast<int>(random() % 7);
        ASSERT_EQ(parseDecimal(decimalText(value, decimals), decimals), value);
    }
}

TEST(Decimal, TakesOnlyPlainNumbers) {
    EXPECT_EQ(parseDecimal(u"3.250", 2), 325);
    EXPECT_EQ(parseDecimal(u"3.2500000000000000000000", 2), 325);
    EXPECT_EQ(parseDecimal(u"+.5", 2), 50);
    EXPECT_EQ(parseDecimal(u"5.", 2), 500);
    EXPECT_EQ(parseDecimal(u"-0", 2), 0);
    EXPECT_EQ(parseDecimal(u"9223372036854775807", 0), INT64_MAX);
    for (const char* text : {"", ".", "-", "+", "--1", "1e3", " 1", "1 ", "1,5", "0x1", "1.2.3", "3.251", "inf", "nan",
                             "9223372036854775808", "92233720368547758.08", "٣"})
        EXPECT_EQ(parseDecimal(QString::fromUtf8(text), 2), std::nullopt) << text;
}

// Own calculation: n tenths of a metre are right where (n - 1/2)·100 mm <= distance < (n + 1/2)·100 mm.
TEST(Distance, IsRoundedHalfUpExactly) {
    EXPECT_EQ(distanceTenths({0, 0}, {0, 0}), 0);
    EXPECT_EQ(distanceTenths({0, 0}, {49, 0}), 0);
    EXPECT_EQ(distanceTenths({0, 0}, {50, 0}), 1);
    EXPECT_EQ(distanceTenths({0, 0}, {149, 0}), 1);
    EXPECT_EQ(distanceTenths({0, 0}, {0, -150}), 2);
    EXPECT_EQ(distanceTenths({0, 0}, {30, 40}), 1); // 50 mm
    EXPECT_EQ(squaredDistance({-10'000'000, -10'000'000}, {10'000'000, 10'000'000}), 800'000'000'000'000);
    std::mt19937 random(13); // seed: 13
    for (int i = 0; i < 20000; ++i) {
        const auto at = [&] { return static_cast<qint32>(random() % 20'000'001) - 10'000'000; };
        const MmPoint a{at(), at()};
        const MmPoint b = i % 2 ? MmPoint{at(), at()} : a + MmPoint{static_cast<qint32>(random() % 1000), 0};
        const qint64 n = distanceTenths(a, b);
        const qint64 squared = squaredDistance(a, b);
        if (n > 0) {
            ASSERT_LE((2 * n - 1) * (2 * n - 1) * 2500, squared);
        }
        ASSERT_LT(squared, (2 * n + 1) * (2 * n + 1) * 2500);
    }
}

} // namespace
