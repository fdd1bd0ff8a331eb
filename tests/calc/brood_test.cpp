#include "core/rules/calc/brood.h"
#include "core/rules/calc/brood_days.h"

#include "tests/calc/published.h"
#include "tests/calc/sources.h"

// Brood on frames, its cells and its days.

namespace {

using namespace core;
using namespace core::rules::calc;

constexpr Quarters frames(int whole) { return {4 * whole}; }

TEST(Brood, CellsOfABoxFullOfBrood) {
    const auto cells = [](int n, int length, int height) {
        return broodOn(frames(n), combShare(length, height)).cells;
    };
    expectPublished({
        {kBbkaBoxes, broodOn(frames(10)).cells.low, 61000, 0},
        {kBbkaBoxes, cells(11, 460, 225).low, 55000, 0.05 * 55000}, // National
        {kBbkaBoxes, cells(11, 460, 317).low, 80300, 0.05 * 80300}, // National 14 x 12
        {kBbkaBoxes, cells(11, 465, 267).low, 70625, 0.05 * 70625}, // Commercial
    });
}

TEST(Brood, AreaOfComb) {
    constexpr double kSquareInch = 6.4516;
    expectPublished({{kHiveList, broodOn(frames(10)).areaCm2 / kSquareInch, 2750, 60}});
}

TEST(Brood, CellsOfASquareDecimetre) {
    expectPublished({
        {kBetts, cellsPerDm2(100 / 20.0), 923, 1},
        {kBetts, cellsPerDm2(100 / 12.8), 378, 1},
    });
    EXPECT_NEAR(cellsPerDm2(5.2), 854, 0.5); // own calculation, 100² · 4/√3 / 5.2²
    EXPECT_NEAR(cellsPerDm2(5.2), 857, 4);   // from memory: a multiplier often used for European bees
}

// Source: own calculation, 42 · 6100 / 4 = 64050 and · 6688 / 4 = 70224, each by 21 days.
TEST(Brood, EggsADay) {
    const Brood brood = broodOn(Quarters{42});
    EXPECT_EQ(brood.cells, (Range{64050, 70224}));
    EXPECT_EQ(brood.eggsADay, (Range{3050, 3344}));
    EXPECT_FALSE(brood.combAssumed);
    EXPECT_TRUE(broodOn(Quarters{42}, combShare({}, {})).combAssumed);
}

TEST(Brood, DaysOfTheThreeCastes) {
    const Day laid = dayOf(2026, 5, 1);
    const auto out = [&](const CasteDays& caste) { return broodDays(laid, caste).emerges - laid; };
    expectPublished({
        {kLifeStages, double(out(kQueenDays)), 3 + 5.5 + 7.5, 0},
        {kLifeStages, double(out(kWorkerDays)), 3 + 6 + 12, 0},
        {kLifeStages, double(out(kDroneDays)), 3 + 6.5 + 14.5, 0},
        {kLifeStages, double(broodDays(laid, kQueenDays).sealed - laid), 3 + 5.5, 0.5},
        {kSwarmBooklet, double(broodDays(laid, kQueenDays).hatches - laid), 3, 0},
        {kSwarmBooklet, double(broodDays(laid, kQueenDays).sealed - laid), 8, 0},
        {kSwarmBooklet, double(out(kQueenDays)), 16, 0},
    });
    EXPECT_EQ(isoText(broodDays(laid, kDroneDays).sealed), "2026-05-11"); // half a day counts to the next
    EXPECT_EQ(isoText(broodless(laid)), "2026-05-25");                    // the last drones, own calculation
}

} // namespace
