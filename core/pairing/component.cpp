#include "core/pairing/component.h"

#include <lemon/matching.h>
#include <lemon/smart_graph.h>

#include <algorithm>
#include <cassert>
#include <numeric>

namespace core::pairing {
namespace {

using Graph = lemon::SmartGraph;
using Weights = Graph::EdgeMap<std::int64_t>;
using Blossoms = lemon::MaxWeightedMatching<Graph, Weights>;

static_assert(kDualScale == std::int64_t{2} * Blossoms::dualScale);

class DisjointSets {
public:
    explicit DisjointSets(int nodes) : m_parent(static_cast<std::size_t>(nodes)) {
        std::iota(m_parent.begin(), m_parent.end(), 0);
    }

    int rootOf(int node) {
        while (parent(node) != node) {
            parent(node) = parent(parent(node));
            node = parent(node);
        }
        return node;
    }

    /// The smaller root stays: a set is named by its smallest node.
    void join(int a, int b) {
        const int rootA = rootOf(a);
        const int rootB = rootOf(b);
        parent(std::max(rootA, rootB)) = std::min(rootA, rootB);
    }

private:
    int& parent(int node) { return m_parent[static_cast<std::size_t>(node)]; }

    std::vector<int> m_parent;
};

void readMates(const Blossoms& solved, const Graph& graph, const std::vector<int>& nodes, Matching& matching) {
    for (Graph::NodeIt node(graph); node != lemon::INVALID; ++node) {
        const auto local = static_cast<std::size_t>(nodes[static_cast<std::size_t>(Graph::id(node))]);
        const Graph::Node mate = solved.mate(node);
        if (mate != lemon::INVALID) {
            matching.mate[local] = nodes[static_cast<std::size_t>(Graph::id(mate))];
        }
        matching.nodeDual[local] = solved.nodeValue(node);
    }
}

void readBlossoms(const Blossoms& solved, const std::vector<int>& nodes, Matching& matching) {
    for (int k = 0; k < solved.blossomNum(); ++k) {
        if (solved.blossomValue(k) == 0) {
            continue;
        }
        Blossom blossom{{}, solved.blossomValue(k)};
        for (Blossoms::BlossomIt node(solved, k); node != lemon::INVALID; ++node) {
            blossom.nodes.push_back(nodes[static_cast<std::size_t>(Graph::id(node))]);
        }
        std::sort(blossom.nodes.begin(), blossom.nodes.end());
        matching.blossoms.push_back(std::move(blossom));
    }
}

} // namespace

std::vector<Component> positiveComponents(int nodes, const std::vector<Edge>& edges) {
    DisjointSets sets(nodes);
    std::vector<char> used(static_cast<std::size_t>(nodes), 0);
    for (const Edge& e : edges) {
        assert(e.u >= 0 && e.u < nodes && e.v >= 0 && e.v < nodes && e.u != e.v);
        assert(e.weight <= kMaxWeight && e.weight >= -kMaxWeight);
        if (e.weight <= 0) {
            continue;
        }
        sets.join(e.u, e.v);
        used[static_cast<std::size_t>(e.u)] = used[static_cast<std::size_t>(e.v)] = 1;
    }
    std::vector<Component> components;
    std::vector<std::size_t> componentOf(static_cast<std::size_t>(nodes));
    std::vector<int> localOf(static_cast<std::size_t>(nodes));
    for (int node = 0; node < nodes; ++node) {
        const auto n = static_cast<std::size_t>(node);
        if (!used[n]) {
            continue;
        }
        const auto root = static_cast<std::size_t>(sets.rootOf(node));
        if (root == n) {
            componentOf[n] = components.size();
            components.emplace_back();
        }
        componentOf[n] = componentOf[root];
        Component& component = components[componentOf[n]];
        localOf[n] = static_cast<int>(component.nodes.size());
        component.nodes.push_back(node);
    }
    for (const Edge& e : edges) {
        if (e.weight <= 0) {
            continue;
        }
        const auto u = static_cast<std::size_t>(e.u);
        components[componentOf[u]].edges.push_back({localOf[u], localOf[static_cast<std::size_t>(e.v)], e.weight});
    }
    return components;
}

Matching solveAllEdges(const Component& component, std::int64_t twicePrice) {
    Matching matching;
    matching.mate.assign(component.nodes.size(), -1);
    matching.nodeDual.assign(component.nodes.size(), 0);
    matching.dualScale = kDualScale;

    // Only the nodes that an edge worth its price touches: at a high price few are left.
    std::vector<int> nodes;
    std::vector<int> graphNode(component.nodes.size(), -1);
    const auto graphNodeOf = [&](int local) {
        int& known = graphNode[static_cast<std::size_t>(local)];
        if (known < 0) {
            known = static_cast<int>(nodes.size());
            nodes.push_back(local);
        }
        return known;
    };
    std::vector<Edge> worth;
    for (const Edge& e : component.edges) {
        const std::int64_t weight = 2 * e.weight - twicePrice;
        if (weight > 0) {
            worth.push_back({graphNodeOf(e.u), graphNodeOf(e.v), weight});
        }
    }
    if (worth.empty()) {
        return matching;
    }

    Graph graph;
    graph.reserveNode(static_cast<int>(nodes.size()));
    graph.reserveEdge(static_cast<int>(worth.size()));
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        graph.addNode();
    }
    Weights weights(graph);
    for (const Edge& e : worth) {
        weights[graph.addEdge(Graph::nodeFromId(e.u), Graph::nodeFromId(e.v))] = e.weight;
    }
    Blossoms solver(graph, weights);
    solver.run();
    readMates(solver, graph, nodes, matching);
    readBlossoms(solver, nodes, matching);
    return matching;
}

} // namespace core::pairing
