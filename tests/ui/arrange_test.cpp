#include "ui/survey/arrange.h"

#include <gtest/gtest.h>

namespace {

using namespace ui::survey;

const Places kBowed = {{0, 0}, {1000, 300}, {2500, -150}, {3000, 90}};

TEST(Arrange, PutsPlacesOnLinesOfTheirMean) {
    // Own calculation: (0 + 300 − 150 + 90) / 4 = 60; (0 + 1000 + 2500 + 3000) / 4 = 1625.
    EXPECT_EQ(onWestEast(kBowed), (Places{{0, 60}, {1000, 60}, {2500, 60}, {3000, 60}}));
    EXPECT_EQ(onNorthSouth(kBowed), (Places{{1625, 0}, {1625, 300}, {1625, -150}, {1625, 90}}));
}

TEST(Arrange, PutsThoseBetweenStraightOntoTheLineOfTheFirstAndTheLast) {
    // Own calculation: onto x = y the point (1000, 0) falls at (500, 500).
    EXPECT_EQ(onTheirLine({{0, 0}, {1000, 0}, {3000, 3000}}), (Places{{0, 0}, {500, 500}, {3000, 3000}}));
    EXPECT_EQ(onTheirLine({{0, 0}, {1000, 0}, {0, 0}}), (Places{{0, 0}, {1000, 0}, {0, 0}})) << "no line";
}

TEST(Arrange, SpreadsEvenlyInTheOrderInWhichTheyStand) {
    // Picked in any order; 0, 1000, 2500, 3000 become 0, 1000, 2000, 3000; north stays.
    EXPECT_EQ(evenly({{0, 0}, {2500, -150}, {1000, 300}, {3000, 0}}),
              (Places{{0, 0}, {2000, -150}, {1000, 300}, {3000, 0}}));
    EXPECT_EQ(evenly({{0, 0}, {5, 5}}), (Places{{0, 0}, {5, 5}}));
}

TEST(Arrange, FindsRowsAndMovesLeast) {
    const Places two = {{0, 0},    {1500, 120},  {3000, -120}, {4500, 0},
                        {0, 3000}, {1500, 3090}, {3000, 2910}, {4500, 3000}};
    EXPECT_EQ(rowsOf(two), 2);
    const Places straight = inRows(two);
    for (size_t i = 0; i < two.size(); ++i) {
        const double x = straight[i].x - two[i].x;
        const double y = straight[i].y - two[i].y;
        EXPECT_LE(x * x + y * y, 150.0 * 150.0) << i << ": no farther than the bow of its row";
    }
    // Each row on one line: the cross product of its steps vanishes, but for the rounding to millimetres.
    for (const size_t row : {0u, 4u})
        for (size_t i = 1; i < 3; ++i) {
            const auto a = straight[row + i] - straight[row];
            const auto b = straight[row + 3] - straight[row];
            EXPECT_NEAR(double(a.x) * b.y - double(a.y) * b.x, 0, 4500 * 1.5) << row << ' ' << i;
        }
    EXPECT_EQ(inRows(straight), straight) << "what is straight stays";
}

TEST(Arrange, LeavesAloneWhatCannotBeArranged) {
    for (const auto& arrange : {onWestEast, onNorthSouth, onTheirLine, evenly, inRows}) {
        EXPECT_EQ(arrange({}), Places{});
        EXPECT_EQ(arrange({{7, 9}}), (Places{{7, 9}}));
    }
    EXPECT_EQ(rowsOf({}), 0);
    EXPECT_EQ(rowsOf({{7, 9}}), 1);
}

} // namespace
