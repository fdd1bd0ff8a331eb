#include "tests/pairing/proof.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <utility>

namespace tests::pairing {
namespace {

using core::pairing::Assignment;
using core::pairing::Blossom;
using core::pairing::Edge;
using core::pairing::Matching;
using core::pairing::Offer;

std::size_t at(int node) { return static_cast<std::size_t>(node); }

bool holds(const Blossom& blossom, int node) {
    return std::find(blossom.nodes.begin(), blossom.nodes.end(), node) != blossom.nodes.end();
}

std::int64_t cover(const Matching& matching, const Edge& e) {
    std::int64_t sum = matching.nodeDual[at(e.u)] + matching.nodeDual[at(e.v)] + matching.price;
    for (const Blossom& blossom : matching.blossoms) {
        if (holds(blossom, e.u) && holds(blossom, e.v)) {
            sum += blossom.dual;
        }
    }
    return sum;
}

std::map<std::pair<int, int>, std::int64_t> bestOfPairs(const Graph& graph) {
    std::map<std::pair<int, int>, std::int64_t> best;
    for (const Edge& e : graph.edges) {
        const auto [known, isNew] = best.emplace(std::minmax(e.u, e.v), e.weight);
        if (!isNew) {
            known->second = std::max(known->second, e.weight);
        }
    }
    return best;
}

} // namespace

void expectIsMatching(const Graph& graph, const Matching& matching, int most) {
    SCOPED_TRACE("graph " + std::to_string(graph.seed) + ", at most " + std::to_string(most));
    ASSERT_EQ(matching.mate.size(), at(graph.nodes));
    const auto best = bestOfPairs(graph);
    std::int64_t sum = 0;
    int pairs = 0;
    for (int node = 0; node < graph.nodes; ++node) {
        const int mate = matching.mate[at(node)];
        if (mate == -1) {
            continue;
        }
        ASSERT_TRUE(mate >= 0 && mate < graph.nodes && mate != node) << "node " << node;
        EXPECT_EQ(matching.mate[at(mate)], node);
        if (node > mate) {
            continue;
        }
        const auto pair = best.find({node, mate});
        ASSERT_NE(pair, best.end()) << node << " and " << mate << " have no edge";
        EXPECT_GT(pair->second, 0) << node << " and " << mate << " are better left alone";
        sum += pair->second;
        ++pairs;
    }
    EXPECT_EQ(matching.weight, sum);
    EXPECT_EQ(matching.size(), pairs);
    EXPECT_LE(pairs, most);
}

void expectProved(const Graph& graph, const Matching& matching, int most) {
    SCOPED_TRACE("graph " + std::to_string(graph.seed) + ", at most " + std::to_string(most));
    ASSERT_EQ(matching.nodeDual.size(), at(graph.nodes));
    ASSERT_GT(matching.dualScale, 0);
    EXPECT_GE(matching.price, 0);
    std::int64_t dualSum = matching.price == 0 ? 0 : matching.price * most;
    for (const std::int64_t dual : matching.nodeDual) {
        EXPECT_GE(dual, 0);
        dualSum += dual;
    }
    for (const Blossom& blossom : matching.blossoms) {
        EXPECT_GT(blossom.dual, 0);
        EXPECT_TRUE(blossom.nodes.size() >= 3 && blossom.nodes.size() % 2 == 1);
        EXPECT_TRUE(std::adjacent_find(blossom.nodes.begin(), blossom.nodes.end(), std::greater_equal<int>()) ==
                    blossom.nodes.end()); // ascending, so each node once
        dualSum += blossom.dual * static_cast<std::int64_t>(blossom.nodes.size() / 2);
    }
    const auto best = bestOfPairs(graph);
    for (const Edge& e : graph.edges) {
        const std::int64_t slack = cover(matching, e) - matching.dualScale * e.weight;
        EXPECT_GE(slack, 0) << "edge " << e.u << ", " << e.v;
        if (matching.mate[at(e.u)] == e.v && best.at(std::minmax(e.u, e.v)) == e.weight) {
            EXPECT_EQ(slack, 0) << "edge " << e.u << ", " << e.v;
        }
    }
    EXPECT_EQ(matching.dualScale * matching.weight, dualSum);
}

void expectProved(int perHost, const std::vector<Offer>& offers, const Assignment& answer) {
    std::map<std::pair<int, int>, std::int64_t> best;
    for (const Offer& offer : offers) {
        const auto [known, isNew] = best.emplace(std::make_pair(offer.guest, offer.host), offer.value);
        if (!isNew) {
            known->second = std::max(known->second, offer.value);
        }
    }
    std::vector<int> taken(answer.hostDual.size(), 0);
    std::int64_t value = 0;
    int placed = 0;
    std::int64_t dualSum = 0;
    for (std::size_t guest = 0; guest < answer.host.size(); ++guest) {
        EXPECT_GE(answer.guestDual[guest], 0);
        dualSum += answer.guestDual[guest];
        const int host = answer.host[guest];
        if (host == -1) {
            continue;
        }
        const auto offer = best.find({static_cast<int>(guest), host});
        ASSERT_NE(offer, best.end()) << "guest " << guest << " was never offered " << host;
        EXPECT_EQ(answer.guestDual[guest] + answer.hostDual[at(host)], offer->second + answer.bonus);
        value += offer->second;
        ++placed;
        ++taken[at(host)];
    }
    for (std::size_t host = 0; host < taken.size(); ++host) {
        EXPECT_LE(taken[host], perHost) << "host " << host;
        EXPECT_GE(answer.hostDual[host], 0);
        dualSum += perHost * answer.hostDual[host];
    }
    for (const Offer& offer : offers) {
        EXPECT_GE(answer.guestDual[at(offer.guest)] + answer.hostDual[at(offer.host)], offer.value + answer.bonus);
    }
    EXPECT_EQ(answer.value, value);
    EXPECT_EQ(answer.placed, placed);
    EXPECT_EQ(dualSum, value + answer.bonus * placed);
}

} // namespace tests::pairing
