#include "core/rules/calc/bees.h"

#include "tests/calc/published.h"
#include "tests/calc/sources.h"

// Bees on frames of bees, and boxes against the Langstroth deep.

namespace {

using namespace core;
using namespace core::rules::calc;

constexpr Quarters frames(int whole) { return {4 * whole}; }

TEST(Bees, TheHighEndIsTheRuleOfThumb) {
    expectPublished({
        {kUsdaWinter, beesOn(frames(12)).bees.high, 30000, 0},
        {kCraft, beesOn(frames(10)).bees.high, 25000, 0}, // ten frames covered
    });
}

TEST(Bees, EverySourceLiesInTheRange) {
    const Bees one = beesOn(frames(1));
    EXPECT_EQ(one.bees, (Range{1400, 2500}));
    EXPECT_EQ(one.covered, 2430);
    for (const BeesPerFrame& source : beesPerFrame()) {
        EXPECT_GE(source.bees, one.bees.low) << source.source;
        EXPECT_LE(source.bees, one.bees.high) << source.source;
    }
}

// Source: own calculation, 5.25 · 1400 = 7350, · 2430 = 12757.5, · 2500 = 13125.
TEST(Bees, QuarterFrames) {
    const Bees bees = beesOn(Quarters{21});
    EXPECT_EQ(bees.bees, (Range{7350, 13125}));
    EXPECT_EQ(bees.covered, 12758);
    EXPECT_EQ(beesOn(Quarters{0}).bees, (Range{0, 0}));
}

TEST(Bees, AnUnknownBoxIsTakenAsALangstrothAndSaysSo) {
    EXPECT_TRUE(combShare({}, 244).assumed);
    EXPECT_TRUE(combShare(505, {}).assumed);
    EXPECT_EQ(combShare({}, {}).share, 1);
    EXPECT_TRUE(beesOn(frames(4), combShare({}, {})).combAssumed);
    EXPECT_FALSE(beesOn(frames(4), combShare(505, 244)).combAssumed);
    EXPECT_EQ(beesOn(frames(4), combShare(505, 244)).bees, beesOn(frames(4)).bees);
}

// The share is taken from the outside of the boxes (UK list of hive sizes; Wikibooks, British National), the printed
// one from cells a frame against the Langstroth's 6100: neither is made from the other.
TEST(Bees, ShareOfOtherBoxesIsThatOfTheirPrintedCells) {
    constexpr double kLangstroth = 61000.0 / 10;
    constexpr double kWithin = 0.05;
    const auto ratio = [](int length, int height, double cells, int of) {
        return combShare(length, height).share / (cells / of / kLangstroth);
    };
    expectPublished({
        {kBbkaBoxes, ratio(460, 225, 55000, 11), 1, kWithin}, // National
        {kBbkaBoxes, ratio(460, 317, 80300, 11), 1, kWithin}, // National 14 x 12
        {kBbkaBoxes, ratio(465, 267, 70625, 11), 1, kWithin}, // Commercial, 18 5/16 by 10 1/2 inches
    });
}

} // namespace
