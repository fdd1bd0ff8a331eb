#include "core/rules/calc/new_queen.h"
#include "core/rules/calc/queen_mark.h"

#include "tests/calc/published.h"
#include "tests/calc/sources.h"

// The days of a new queen, and the colour of her mark.

namespace {

using namespace core;
using namespace core::rules::calc;

const Day start = dayOf(2026, 5, 10);

double after(Day day) { return day - start; }

// A split with a cell just sealed. The source counts 19 to 21 days to the first workers, where the life-stage table
// that it starts from has 21; and a cell of 7 days, where another has 8.
TEST(NewQueen, OfASealedCell) {
    const NewQueenDays days = newQueenDays(QueenFrom::CellSealed, start);
    expectPublished({
        {kMacFawn, after(days.emerges.first), 7, 0},
        {kSwarmBooklet, after(days.emerges.last), 16 - 8, 0},
        {kLifeStages, after(days.emerges.first), 7.5, 0.5},
        {kMacFawn, after(days.mayLay.first), 7 + 10, 0},
        {kMacFawn, after(days.firstWorkers.first), 36, 2},
        {kMacFawn, after(days.firstWorkers.last), 42, 1},
    });
}

TEST(NewQueen, ReadyToLay) {
    const NewQueenDays days = newQueenDays(QueenFrom::Emerged, start);
    expectPublished({
        {kMacFawn, after(days.mayLay.first), 10, 0},
        {kMacFawn, after(days.mayLay.last), 14, 0},
        {kPbka, double(days.lookAgain - days.look), 8, 1},
    });
    EXPECT_EQ(days.look, days.mayLay.last);
    EXPECT_EQ(days.emerges, (DayRange{start, start}));
}

// Source of the first day: own calculation, a larva of two days has 16 − 3 − 2 = 11 days to go.
TEST(NewQueen, RearedByTheBees) {
    const NewQueenDays days = newQueenDays(QueenFrom::QueenLost, start);
    expectPublished({{kMacFawn, after(days.emerges.last), 17, 0}});
    EXPECT_EQ(after(days.emerges.first), 11);
    EXPECT_EQ(isoText(days.mayLay.first), "2026-05-31");
    EXPECT_EQ(isoText(days.mayLay.last), "2026-06-10");
    EXPECT_EQ(isoText(days.look), "2026-06-10");
}

TEST(NewQueen, WorkersMayLayWhereNoneCame) {
    const DayRange days = layingWorkersFrom(start);
    expectPublished({{kSustainable, after(days.first), 20, 3}}); // "20 or more days"
    EXPECT_EQ(after(days.last), 9 + 21);                         // own calculation
}

double mark(int year) { return static_cast<double>(queenMarkOf(year)); }
constexpr double kWhiteMark = 0, kYellowMark = 1, kRedMark = 2, kGreenMark = 3, kBlueMark = 4;

TEST(QueenMark, ColoursByTheLastDigit) {
    expectPublished({
        {kLaunceston, mark(2021), kWhiteMark, 0},
        {kLaunceston, mark(2016), kWhiteMark, 0},
        {kLaunceston, mark(2022), kYellowMark, 0},
        {kLaunceston, mark(2017), kYellowMark, 0},
        {kLaunceston, mark(2023), kRedMark, 0},
        {kLaunceston, mark(2018), kRedMark, 0},
        {kLaunceston, mark(2024), kGreenMark, 0},
        {kLaunceston, mark(2019), kGreenMark, 0},
        {kLaunceston, mark(2025), kBlueMark, 0},
        {kLaunceston, mark(2020), kBlueMark, 0},
    });
    EXPECT_STREQ(markWord(queenMarkOf(2026)), "white"); // own calculation from the same table
    EXPECT_STREQ(markWord(queenMarkOf(2022)), "yellow");
    EXPECT_STREQ(markWord(queenMarkOf(2023)), "red");
    EXPECT_STREQ(markWord(queenMarkOf(2024)), "green");
    EXPECT_STREQ(markWord(queenMarkOf(2020)), "blue");
}

} // namespace
