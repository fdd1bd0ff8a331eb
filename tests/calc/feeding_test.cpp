#include "core/rules/calc/feeding.h"
#include "core/rules/calc/stores.h"

#include "tests/calc/published.h"
#include "tests/calc/sources.h"

#include <cmath>

// Syrup, feed needed, stores.

namespace {

using namespace core;
using namespace core::rules::calc;

constexpr double kPound = 0.45359237;
constexpr Quarters frames(int whole) { return {4 * whole}; }

Mix ofPercent(double sugar) { return {sugar, 100 - sugar}; }
double gramsPerLitre(double percent) { return 1000 * syrupOf(ofPercent(percent)).sugarKgPerL.value_or(0); }
double kgPerM3(double percent) { return 1000 * densityKgPerL(percent).value_or(0); }

TEST(Syrup, DensityOfTheTable) {
    expectPublished({
        {kCrc, kgPerM3(50), 1229.5, 1e-9},
        {kCrc, kgPerM3(60), 1286.4, 1e-9},
        {kCrc, kgPerM3(66), 1322.4, 1e-9},
        {kCrc, kgPerM3(68), 1334.8, 1e-9},
        {kCrc, kgPerM3(70), 1347.2, 1e-9},
    });
    EXPECT_FALSE(densityKgPerL(49.9));
    EXPECT_FALSE(densityKgPerL(70.1));
}

// Another column of the handbook than the one that the calculator has.
TEST(Syrup, SugarInALitre) {
    expectPublished({
        {kCrcGrams, gramsPerLitre(50), 614.8, 0.1},
        {kCrcGrams, gramsPerLitre(60), 771.9, 0.1},
        {kCrcGrams, gramsPerLitre(66), 872.8, 0.1},
        {kCrcGrams, gramsPerLitre(68), 907.6, 0.1},
        {kCrcGrams, gramsPerLitre(70), 943.1, 0.1},
    });
}

// The density that the same book prints for the saturated solution lies 0.26 % above the handbook's.
TEST(Syrup, Saturation) {
    expectPublished({
        {kMohos, sugarPercent({203.9, 100}), 67.09, 0.005},
        {kMohos, kgPerM3(67.09), 1332.7, 0.004 * 1332.7},
    });
    EXPECT_FALSE(syrupOf({2, 1}).saturated);
    EXPECT_TRUE(syrupOf({2.04, 1}).saturated);
}

// Own calculation: the two numbers of the text.
TEST(Syrup, AMixIsReadFromItsText) {
    const auto told = [](QStringView text) {
        const auto mix = mixOf(text);
        return mix ? std::to_string(mix->sugarKg) + "/" + std::to_string(mix->waterKg) : std::string();
    };
    EXPECT_EQ(told(u"3:2"), "3.000000/2.000000");
    EXPECT_EQ(told(u" 1,5 : 1.25 "), "1.500000/1.250000");
    for (const char16_t* wrong : {u"", u"2", u"2:", u":1", u"0:1", u"2:0", u"2:-1", u"2:1:1", u"thick", u"101:1"})
        EXPECT_FALSE(mixOf(wrong)) << QString::fromUtf16(wrong).toStdString();
}

// Source: own calculation from the handbook's table: 1326.5 kg/m³ and 0.884 kg a litre; 15 litres hold 13.27 kg of
// sugar and make 16.2 kg of stores.
TEST(Syrup, TwoToOneByMass) {
    const Syrup syrup = syrupOf({2, 1});
    EXPECT_NEAR(kgPerM3(syrup.sugarPercent), 1326.5, 0.05);
    EXPECT_NEAR(*syrup.sugarKgPerL, 0.884, 0.0005);
    EXPECT_NEAR(15 * *syrup.sugarKgPerL, 13.27, 0.005);
    EXPECT_NEAR(15 * *syrup.storesKgPerL, 16.2, 0.05);
}

// The same figure stands as the default of a setting.
TEST(Syrup, TheSettingIsTheCalculatorsFigure) {
    EXPECT_EQ(std::llround(1000 * *syrupOf({2, 1}).storesKgPerL) * 1000, Settings{}.storesKgPerL.value);
}

// Source: own calculation. 1 kg to 630 ml (National Bee Unit): 61.39 %, 1294.75 kg/m³, 0.795 kg a litre; 25 kg of it
// hold 15.3 kg of sugar, 18.7 kg of stores. 2 lb to the imperial pint 61.5 %, to the US pint 65.8 %.
TEST(Syrup, MixesAreNotTheirNicknames) {
    const Mix thick{1, 0.630 * kWaterKgPerL};
    EXPECT_NEAR(sugarPercent(thick), 61.39, 0.005);
    EXPECT_NEAR(kgPerM3(sugarPercent(thick)), 1294.75, 0.005);
    EXPECT_NEAR(*syrupOf(thick).sugarKgPerL, 0.795, 0.0005);
    const double share = sugarPercent(thick) / 100;
    EXPECT_NEAR(25 * share, 15.3, 0.05);
    EXPECT_NEAR(25 * share / kSugarInStores, 18.7, 0.05);
    EXPECT_NEAR(sugarPercent({2 * kPound, 0.56826 * kWaterKgPerL}), 61.5, 0.05);
    EXPECT_NEAR(sugarPercent({2 * kPound, 0.47318 * kWaterKgPerL}), 65.8, 0.05);
}

TEST(Syrup, OutsideTheTableThereAreNoLitresButStores) {
    const Syrup thin = syrupOf({1, 2});
    EXPECT_FALSE(thin.litres);
    EXPECT_FALSE(thin.storesKgPerL);
    EXPECT_NEAR(thin.storesKg, 1 / 0.82, 1e-12);
}

// Source: own calculation; 1.078 kg makes one litre, a thousandth more a half litre more.
TEST(Feeding, HalfLitresAreRoundedUpExactly) {
    const Millionths perLitre{1'078'000};
    EXPECT_EQ(halfLitresFor(-5, perLitre), 0);
    EXPECT_EQ(halfLitresFor(0, perLitre), 0);
    EXPECT_EQ(halfLitresFor(1, perLitre), 1);
    EXPECT_EQ(halfLitresFor(539'000, perLitre), 1);
    EXPECT_EQ(halfLitresFor(539'001, perLitre), 2);
    EXPECT_EQ(halfLitresFor(1'078'000, perLitre), 2);
}

// Source: own calculation; 10 kg of stores hold 8.2 kg of sugar, with 4.1 kg of water 12.3 kg, 9.27 litres.
TEST(Feeding, SugarAndWaterForStores) {
    const Feeding feeding = feedingFor(10, {2, 1});
    EXPECT_NEAR(feeding.sugarKg, 8.2, 1e-9);
    EXPECT_NEAR(feeding.waterKg, 4.1, 1e-9);
    EXPECT_NEAR(*feeding.litres, 9.272, 0.001);
    EXPECT_FALSE(feedingFor(10, {1, 2}).litres);
}

TEST(Stores, ForTheMonthsOfWinter) { expectPublished({{kBienenNatur, storesForMonths(4, 3), 15, 0}}); }

// Frames of other boxes come out of the Langstroth's by their comb: each printed figure lies in the range.
TEST(Stores, OnFullFramesOfOtherBoxes) {
    const auto middle = [](const Range& r) { return (r.low + r.high) / 2; };
    const auto half = [](const Range& r) { return (r.high - r.low) / 2; };
    const Range national = storesOn(frames(1), combShare(460, 225));
    const Range nine = storesOn(frames(9), combShare(460, 225));
    const Range dnm = storesOn(frames(1), combShareOfArea(700));
    const Range zander = storesOn(frames(1), combShareOfArea(764));
    const Range dadant = storesOn(frames(1), combShareOfArea(1096));
    expectPublished({
        {kBbkaNews, middle(national), 5 * kPound, half(national)}, // about 5 lb in a full brood frame
        {kBbkaNews, middle(nine), 20, half(nine)},                 // nine frames fill the need
        {kBienenNatur, middle(dnm), 2, half(dnm)},
        {kBienenNatur, middle(zander), 2.1, half(zander)}, // "slightly more than 2"
        {kBienenNatur, middle(dadant), 3, half(dadant)},
        {kBbkaNews, storesOn(frames(1)).high, 3, 0}, // a full Langstroth frame
    });
}

TEST(Stores, WhatSourcesAskFor) {
    double last = 0;
    double twoBoxes = 0;
    for (const StoresWanted& wanted : storesWanted()) {
        EXPECT_GT(wanted.kg, 0);
        EXPECT_STRNE(wanted.source, "");
        if (wanted.wholeHive) twoBoxes = wanted.kg;
        if (!wanted.wholeHive) last = wanted.kg;
    }
    EXPECT_EQ(last, 25);
    expectPublished({{kFarrar, twoBoxes, 130 * kPound, 0.05}});
    EXPECT_EQ(storesWanted()[4].kg, Settings{}.singleKg.real());
    EXPECT_EQ(storesWanted()[5].kg, Settings{}.doubleKg.real());
}

} // namespace
