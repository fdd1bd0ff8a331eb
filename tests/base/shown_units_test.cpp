#include "core/base/shown_units.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace core;

namespace {

// Factors: NIST Special Publication 811 (2008), appendix B.8: 1 lb = 4.535 923 7 E-01 kg exactly, 1 ft = 3.048 E-01 m
// exactly (both the international yard and pound agreement of 1959), 1 quart (US liquid) = 9.463 529 E-04 m³
// (57.75 cubic inches of 2.54 cm each: 0.946 352 946 l).

TEST(ShownUnits, WeightsInPounds) {
    // 100 kg are 220.462 lb, 32 kg 70.548 lb, 45 kg 99.208 lb: own calculation, divided by 0.45359237.
    EXPECT_EQ(weightNumber({10000}, WeightUnit::Pounds), QStringLiteral("220.5"));
    EXPECT_EQ(weightNumber({3200}, WeightUnit::Pounds), QStringLiteral("70.5"));
    EXPECT_EQ(weightNumber({4500}, WeightUnit::Pounds), QStringLiteral("99.2"));
    EXPECT_EQ(weightNumber({0}, WeightUnit::Pounds), QStringLiteral("0"));
    EXPECT_EQ(weightNumber({3252}, WeightUnit::Kilograms), QStringLiteral("32.52"));
}

TEST(ShownUnits, FeedGivenIsShownAndReadInBothUnits) {
    EXPECT_EQ(volumeNumber({10'500}, VolumeUnit::Litres), QStringLiteral("10.5"));
    EXPECT_EQ(volumeNumber({1}, VolumeUnit::Litres), QStringLiteral("0.001"));
    // own calculation, 10 / 0.946352946 = 10.567
    EXPECT_EQ(volumeNumber({10'000}, VolumeUnit::Quarts), QStringLiteral("10.6"));
    EXPECT_EQ(parseVolume(u" 10,5 ", VolumeUnit::Litres), Millilitres{10'500});
    EXPECT_EQ(parseVolume(u"4", VolumeUnit::Quarts), Millilitres{3785}); // own calculation, 4 × 946.352946
    for (const char* none : {"", "ten", "-1", "1.2345", "9999999999"})
        EXPECT_FALSE(parseVolume(QString::fromLatin1(none), VolumeUnit::Litres)) << none;
    for (qint32 tenths = 1; tenths < 400; ++tenths) {
        const QString typed = decimalText(tenths, 1);
        const auto kept = parseVolume(typed, VolumeUnit::Quarts);
        EXPECT_EQ(volumeNumber(kept.value(), VolumeUnit::Quarts), typed);
    }
}

TEST(ShownUnits, ShortWeightsRoundHalfUpFromTheExactValue) {
    EXPECT_EQ(weightTenths(6'049'999, WeightUnit::Kilograms), 60);
    EXPECT_EQ(weightTenths(6'050'000, WeightUnit::Kilograms), 61);
    // 0.05 lb are 0.0226796185 kg: below 22 679.6 mg nothing, above it a tenth.
    EXPECT_EQ(weightTenths(22'679, WeightUnit::Pounds), 0);
    EXPECT_EQ(weightTenths(22'680, WeightUnit::Pounds), 1);
}

TEST(ShownUnits, WhatIsTypedInPoundsIsShownAgain) {
    for (int tenths = 0; tenths <= 6613; ++tenths) {
        const QString typed = decimalText(tenths, 1);
        const auto kept = parseWeight(typed, WeightUnit::Pounds);
        ASSERT_TRUE(kept);
        ASSERT_EQ(weightNumber(*kept, WeightUnit::Pounds), typed);
    }
    EXPECT_EQ(parseWeight(u"1", WeightUnit::Pounds)->value, 45);        // 0.45359237 kg
    EXPECT_EQ(parseWeight(u" 71,7 ", WeightUnit::Pounds)->value, 3252); // 32.5226 kg
}

TEST(ShownUnits, EveryWeightInKilogramsIsShownAgain) {
    for (int w = 0; w <= 30000; ++w)
        ASSERT_EQ(parseWeight(weightNumber({w}, WeightUnit::Kilograms), WeightUnit::Kilograms)->value, w);
}

TEST(ShownUnits, NoWeight) {
    for (const auto* text : {u"", u"-1", u"1.25", u"12 lb", u"1e2", u"99999999999"})
        EXPECT_FALSE(parseWeight(text, WeightUnit::Pounds)) << QString::fromUtf16(text).toStdString();
    EXPECT_FALSE(parseWeight(u"1.255", WeightUnit::Kilograms));
}

TEST(ShownUnits, FeedIsTheRulesAmountConverted) {
    // 9.5 l are 10.0385 US quarts, 6 l 6.3401: own calculation, divided by 0.946352946.
    EXPECT_EQ(feedTenths(19, VolumeUnit::Quarts), 100);
    EXPECT_EQ(feedTenths(12, VolumeUnit::Quarts), 63);
    EXPECT_EQ(feedTenths(19, VolumeUnit::Litres), 95);
    EXPECT_EQ(feedTenths(0, VolumeUnit::Quarts), 0);
}

TEST(ShownUnits, DistancesInFeetExactlyFromTheMillimetres) {
    EXPECT_EQ(distanceTenths({0, 0}, {3048, 0}, LengthUnit::Feet), 100);    // 10 ft
    EXPECT_EQ(distanceTenths({0, 0}, {0, 3000}, LengthUnit::Feet), 98);     // 9.843 ft
    EXPECT_EQ(distanceTenths({0, 0}, {3000, 4000}, LengthUnit::Feet), 164); // 16.404 ft
    // Half of a tenth of a foot is 15.24 mm.
    EXPECT_EQ(distanceTenths({0, 0}, {15, 0}, LengthUnit::Feet), 0);
    EXPECT_EQ(distanceTenths({0, 0}, {16, 0}, LengthUnit::Feet), 1);
    EXPECT_EQ(distanceTenths({0, 0}, {381, 0}, LengthUnit::Feet), 13);                     // 1.25 ft, half up
    EXPECT_EQ(distanceTenths({-9'999'000, 0}, {9'999'000, 0}, LengthUnit::Feet), 656'102); // 65 610.236 ft
    EXPECT_EQ(distanceTenths({0, 0}, {7449, 0}, LengthUnit::Metres), 74);
}

TEST(ShownUnits, DistanceInFeetIsTheNearestTenth) {
    // own calculation: hypot in floating point, away from ties
    for (int x = 0; x < 20'000; x += 37) {
        const double feet = std::hypot(x, 211.0) / 30.48;
        if (std::abs(feet - std::floor(feet) - 0.5) < 1e-9) continue;
        ASSERT_EQ(distanceTenths({0, 0}, {x, 211}, LengthUnit::Feet), std::lround(feet)) << x;
    }
}

TEST(ShownUnits, Lengths) {
    EXPECT_EQ(lengthTenths(1'000'000, LengthUnit::Feet), 32808); // 3280.84 ft
    EXPECT_EQ(lengthTenths(3000, LengthUnit::Metres), 30);
    EXPECT_EQ(millimetresIn(LengthUnit::Feet), 304.8);
}

} // namespace
