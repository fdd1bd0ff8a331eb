#include "core/pairing/matching.h"

#include "tests/pairing/graphs.h"
#include "tests/pairing/proof.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using core::pairing::kMaxWeight;
using core::pairing::Matching;
using core::pairing::maxWeightMatching;
using tests::pairing::circleGraph;
using tests::pairing::expectIsMatching;
using tests::pairing::expectProved;
using tests::pairing::Graph;
using tests::pairing::greatestSums;
using tests::pairing::randomGraph;
using tests::pairing::yardGraph;

TEST(Matching, NothingToMatch) {
    EXPECT_EQ(maxWeightMatching(0, {}).size(), 0);
    EXPECT_EQ(maxWeightMatching(3, {}).mate, (std::vector<int>{-1, -1, -1}));
    EXPECT_EQ(maxWeightMatching(2, {{0, 1, 0}}).size(), 0);
    EXPECT_EQ(maxWeightMatching(2, {{0, 1, -5}}).size(), 0);
}

// Source: own calculation, by hand: 0-1-2-3 with 5, 11, 5: the one in the middle is worth more than both others; with
// 5, 9, 5 it is not.
TEST(Matching, TheSumCountsNotTheNumber) {
    EXPECT_EQ(maxWeightMatching(4, {{0, 1, 5}, {1, 2, 11}, {2, 3, 5}}).mate, (std::vector<int>{-1, 2, 1, -1}));
    EXPECT_EQ(maxWeightMatching(4, {{0, 1, 5}, {1, 2, 9}, {2, 3, 5}}).mate, (std::vector<int>{1, 0, 3, 2}));
}

// Source: own calculation, by hand: of a triangle only one edge can be taken, and no node duals alone add up to it
// (halves of 7 each would make 10.5): its odd set has to take part in the proof.
TEST(Matching, AnOddCircleIsProvedByItsBlossom) {
    const Graph triangle{0, 3, {{0, 1, 7}, {1, 2, 7}, {2, 0, 7}}};
    const Matching matching = maxWeightMatching(triangle.nodes, triangle.edges);
    EXPECT_EQ(matching.weight, 7);
    EXPECT_EQ(matching.blossoms.size(), 1U);
    expectIsMatching(triangle, matching, 3);
    expectProved(triangle, matching, 3);
}

TEST(Matching, OfParallelEdgesTheBestCounts) {
    const Matching matching = maxWeightMatching(2, {{0, 1, 3}, {1, 0, 8}, {0, 1, 5}});
    EXPECT_EQ(matching.weight, 8);
    EXPECT_EQ(matching.mate, (std::vector<int>{1, 0}));
}

TEST(Matching, TheGreatestWeightsDoNotOverflow) {
    Graph graph = circleGraph(1, 20);
    for (auto& e : graph.edges) {
        e.weight = kMaxWeight - e.weight;
    }
    const Matching matching = maxWeightMatching(graph.nodes, graph.edges);
    expectIsMatching(graph, matching, graph.nodes);
    expectProved(graph, matching, graph.nodes);
}

TEST(Matching, EqualsTryingAllOnSmallGraphs) {
    for (unsigned seed = 0; seed < 4000; ++seed) {
        const Graph graph = randomGraph(seed, 10);
        const Matching matching = maxWeightMatching(graph.nodes, graph.edges);
        const std::vector<std::int64_t> sums = greatestSums(graph);
        EXPECT_EQ(matching.weight, *std::max_element(sums.begin(), sums.end())) << "graph " << seed;
        expectIsMatching(graph, matching, graph.nodes);
        expectProved(graph, matching, graph.nodes);
        ASSERT_FALSE(HasFailure());
    }
}

TEST(Matching, IsProvedOnLargerGraphs) {
    std::size_t blossoms = 0;
    for (unsigned seed = 0; seed < 60; ++seed) {
        for (const Graph& graph : {randomGraph(seed, 120), circleGraph(seed, 25), yardGraph(seed, 41)}) {
            const Matching matching = maxWeightMatching(graph.nodes, graph.edges);
            expectIsMatching(graph, matching, graph.nodes);
            expectProved(graph, matching, graph.nodes);
            blossoms += matching.blossoms.size();
            ASSERT_FALSE(HasFailure());
        }
    }
    EXPECT_GT(blossoms, 100U) << "the graphs are too easy";
}

TEST(Matching, IsProvedOnTwoHundredNodes) {
    const Graph graph = yardGraph(7, 200);
    const Matching matching = maxWeightMatching(graph.nodes, graph.edges);
    expectIsMatching(graph, matching, graph.nodes);
    expectProved(graph, matching, graph.nodes);
}

TEST(Matching, TheSameInputGivesTheSameMatching) {
    for (unsigned seed = 0; seed < 50; ++seed) {
        const Graph graph = randomGraph(seed, 60);
        EXPECT_EQ(maxWeightMatching(graph.nodes, graph.edges).mate, maxWeightMatching(graph.nodes, graph.edges).mate);
    }
}

} // namespace
