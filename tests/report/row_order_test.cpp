#include "core/report/row_order.h"

#include <gtest/gtest.h>

#include <numeric>
#include <random>

namespace {

using namespace core;
using namespace core::report;

Day on(int day) { return dayOf(2026, 1, 1) + day; }

struct Drawing {
    std::vector<TimeRow> rows;
    std::vector<TimeStroke> strokes;
};

Drawing someDrawing(std::mt19937& random, size_t rows, int strokes) {
    Drawing d;
    const auto some = [&](int below) { return static_cast<int>(random() % static_cast<unsigned>(below)); };
    for (size_t i = 0; i < rows; ++i) {
        const int from = some(500);
        d.rows.push_back({on(from), on(from + some(400))});
    }
    for (int i = 0; i < strokes; ++i) {
        const auto a = static_cast<size_t>(some(static_cast<int>(rows)));
        const auto b = (a + 1 + static_cast<size_t>(some(static_cast<int>(rows) - 1))) % rows;
        d.strokes.push_back({on(some(900)), a, b});
    }
    return d;
}

std::vector<size_t> asGiven(size_t rows) {
    std::vector<size_t> order(rows);
    std::iota(order.begin(), order.end(), size_t{0});
    return order;
}

TEST(RowOrder, CountsLinesThatAStrokeGoesThrough) {
    const std::vector<TimeRow> rows{{on(0), on(99)}, {on(0), on(49)}, {on(0), on(99)}};
    const std::vector<TimeStroke> strokes{{on(10), 0, 2}, {on(60), 0, 2}, {on(49), 2, 0}, {on(5), 0, 1}};
    EXPECT_EQ(crossingsOf(rows, strokes, asGiven(3)), 2) << "on day 60 there is no line between them any more";
}

TEST(RowOrder, PutsAChainInARow) {
    // One colony gives to the next, the rows told in a poor order.
    Drawing d;
    for (int i = 0; i < 12; ++i) d.rows.push_back({on(0), on(730)});
    const std::vector<size_t> chain{0, 7, 3, 11, 1, 9, 5, 2, 10, 4, 8, 6};
    for (size_t i = 1; i < chain.size(); ++i)
        d.strokes.push_back({on(60 * static_cast<int>(i)), chain[i - 1], chain[i]});
    EXPECT_GT(crossingsOf(d.rows, d.strokes, asGiven(12)), 20);
    EXPECT_EQ(crossingsOf(d.rows, d.strokes, quietOrder(d.rows, d.strokes)), 0);
}

TEST(RowOrder, LeavesNothingThatSwappingTwoNeighboursWouldAvoid) {
    std::mt19937 random(12);
    int before = 0, after = 0;
    for (int round = 0; round < 100; ++round) {
        const Drawing d = someDrawing(random, 2 + static_cast<size_t>(round) % 14, round % 40);
        auto order = quietOrder(d.rows, d.strokes);
        const int least = crossingsOf(d.rows, d.strokes, order);
        before += crossingsOf(d.rows, d.strokes, asGiven(d.rows.size()));
        after += least;
        ASSERT_TRUE(std::is_permutation(order.begin(), order.end(), asGiven(d.rows.size()).begin()));
        for (size_t i = 0; i + 1 < order.size(); ++i) {
            std::swap(order[i], order[i + 1]);
            EXPECT_GE(crossingsOf(d.rows, d.strokes, order), least) << "round " << round << ", place " << i;
            std::swap(order[i], order[i + 1]);
        }
    }
    EXPECT_LT(after, before / 2);
}

TEST(RowOrder, OfManyRowsIsAsQuiet) {
    std::mt19937 random(7);
    const Drawing d = someDrawing(random, 210, 400);
    auto order = quietOrder(d.rows, d.strokes);
    const int least = crossingsOf(d.rows, d.strokes, order);
    EXPECT_LT(least, crossingsOf(d.rows, d.strokes, asGiven(210)));
    for (size_t i = 0; i + 1 < order.size(); ++i) {
        std::swap(order[i], order[i + 1]);
        EXPECT_GE(crossingsOf(d.rows, d.strokes, order), least);
        std::swap(order[i], order[i + 1]);
    }
}

TEST(RowOrder, OfNothing) {
    EXPECT_TRUE(quietOrder({}, {}).empty());
    const std::vector<TimeRow> one{{on(0), on(9)}};
    EXPECT_EQ(quietOrder(one, {}), asGiven(1));
}

} // namespace
