#include "core/pairing/matching.h"

#include "tests/pairing/graphs.h"
#include "tests/pairing/proof.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using core::pairing::kMaxWeight;
using core::pairing::Matching;
using core::pairing::maxWeightMatching;
using core::pairing::maxWeightMatchingAtMost;
using tests::pairing::circleGraph;
using tests::pairing::expectIsMatching;
using tests::pairing::expectProved;
using tests::pairing::Graph;
using tests::pairing::greatestSums;
using tests::pairing::randomGraph;
using tests::pairing::yardGraph;

void expectBest(const Graph& graph, int most) {
    const Matching matching = maxWeightMatchingAtMost(graph.nodes, graph.edges, most);
    expectIsMatching(graph, matching, most);
    expectProved(graph, matching, most);
}

// Source: own calculation, by hand: the best single edge (10) is in no best pair of edges (9 + 9).
TEST(MatchingAtMost, FewerIsNotAPartOfMore) {
    const std::vector<core::pairing::Edge> path{{0, 1, 9}, {1, 2, 10}, {2, 3, 9}};
    EXPECT_EQ(maxWeightMatchingAtMost(4, path, 0).mate, (std::vector<int>{-1, -1, -1, -1}));
    EXPECT_EQ(maxWeightMatchingAtMost(4, path, 1).mate, (std::vector<int>{-1, 2, 1, -1}));
    EXPECT_EQ(maxWeightMatchingAtMost(4, path, 2).mate, (std::vector<int>{1, 0, 3, 2}));
}

// Source: own calculation, by hand: each single edge is worth the same; no price tells three from four.
TEST(MatchingAtMost, TiesAreCutExactly) {
    Graph graph{0, 20, {}};
    for (int i = 0; i < 20; i += 2) {
        graph.edges.push_back({i, i + 1, 6});
    }
    for (int most = 0; most <= 11; ++most) {
        const Matching matching = maxWeightMatchingAtMost(graph.nodes, graph.edges, most);
        EXPECT_EQ(matching.size(), std::min(most, 10));
        EXPECT_EQ(matching.weight, 6 * std::min(most, 10));
        expectProved(graph, matching, most);
    }
}

// Source: own calculation, by hand: of 0-1-2-3 with 5, 10, 5 the second edge adds nothing, so one will do as well.
TEST(MatchingAtMost, AnEdgeThatAddsNothingIsNotMissed) {
    const Graph path{0, 4, {{0, 1, 5}, {1, 2, 10}, {2, 3, 5}}};
    const Matching matching = maxWeightMatchingAtMost(path.nodes, path.edges, 1);
    EXPECT_EQ(matching.weight, 10);
    expectProved(path, matching, 1);
    EXPECT_EQ(maxWeightMatchingAtMost(path.nodes, path.edges, 2).weight, 10);
}

TEST(MatchingAtMost, EqualsTryingAllForEachNumber) {
    for (unsigned seed = 10'000; seed < 12'000; ++seed) {
        const Graph graph = randomGraph(seed, 10);
        const std::vector<std::int64_t> sums = greatestSums(graph);
        std::int64_t best = 0;
        for (int most = 0; most <= graph.nodes / 2 + 1; ++most) {
            const auto k = static_cast<std::size_t>(most);
            if (k < sums.size()) {
                best = std::max(best, sums[k]);
            }
            const Matching matching = maxWeightMatchingAtMost(graph.nodes, graph.edges, most);
            EXPECT_EQ(matching.weight, best) << "graph " << seed << ", at most " << most;
            expectIsMatching(graph, matching, most);
            expectProved(graph, matching, most);
        }
        ASSERT_FALSE(HasFailure());
    }
}

TEST(MatchingAtMost, IsProvedOnLargerGraphs) {
    for (unsigned seed = 0; seed < 25; ++seed) {
        for (const Graph& graph : {randomGraph(seed, 100), circleGraph(seed, 25), yardGraph(seed, 31)}) {
            const int all = maxWeightMatching(graph.nodes, graph.edges).size();
            for (const int most : {1, all / 3, all / 2, all - 2, all - 1}) {
                if (most >= 0) {
                    expectBest(graph, most);
                }
            }
            ASSERT_FALSE(HasFailure());
        }
    }
}

TEST(MatchingAtMost, TheGreatestWeightsDoNotOverflow) {
    Graph graph = circleGraph(3, 12);
    for (auto& e : graph.edges) {
        e.weight = kMaxWeight - e.weight;
    }
    for (const int most : {1, 7, 20}) {
        expectBest(graph, most);
    }
}

TEST(MatchingAtMost, ANumberThatIsNoLimitChangesNothing) {
    for (unsigned seed = 0; seed < 50; ++seed) {
        const Graph graph = randomGraph(seed, 40);
        const Matching free = maxWeightMatching(graph.nodes, graph.edges);
        EXPECT_EQ(maxWeightMatchingAtMost(graph.nodes, graph.edges, free.size()).mate, free.mate) << "graph " << seed;
    }
}

TEST(MatchingAtMost, TheSameInputGivesTheSameMatching) {
    for (unsigned seed = 0; seed < 50; ++seed) {
        const Graph graph = randomGraph(seed, 40);
        const int most = graph.nodes / 5;
        EXPECT_EQ(maxWeightMatchingAtMost(graph.nodes, graph.edges, most).mate,
                  maxWeightMatchingAtMost(graph.nodes, graph.edges, most).mate);
    }
}

} // namespace
