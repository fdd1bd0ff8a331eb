#include "core/pairing/component.h"

#include <algorithm>
#include <utility>

namespace core::pairing {
namespace {

constexpr std::size_t kSparse = 16;   // edges a node up to which all are solved at once
constexpr std::size_t kANode = 6;     // edges a node that come in at a time; 5 to 10 measured alike
constexpr std::int64_t kQuarters = 4; // duals of the solver are in quarters of 2 · weight − twicePrice

/// What an edge's ends must cover, in the duals' unit.
std::int64_t worthOf(const Edge& e, std::int64_t twicePrice) { return kQuarters * (2 * e.weight - twicePrice); }

/// For each node, half of what its best edge is worth: duals that cover every edge, to begin with.
std::vector<std::int64_t> firstDuals(const Component& component, std::int64_t twicePrice) {
    std::vector<std::int64_t> dual(component.nodes.size(), 0);
    for (const Edge& e : component.edges) {
        const std::int64_t half = worthOf(e, twicePrice) / 2;
        for (const int node : {e.u, e.v}) {
            std::int64_t& known = dual[static_cast<std::size_t>(node)];
            known = std::max(known, half);
        }
    }
    return dual;
}

/// Prices the edges that are left out, and takes the most wanted ones in.
class Chooser {
public:
    Chooser(const Component& all, std::int64_t twicePrice)
        : m_all(all), m_twicePrice(twicePrice), m_taken(all.edges.size(), 0), m_wanted(all.nodes.size()) {}

    /// Takes in, for each node, the edges with the least slack. `below`: only those whose slack is less. Returns how
    /// many came in.
    std::size_t takeInto(Component& part, const std::vector<std::int64_t>& dual, const std::vector<Blossom>& blossoms,
                         std::int64_t below) {
        findBlossoms(blossoms);
        for (auto& wanted : m_wanted) {
            wanted.clear();
        }
        for (std::size_t i = 0; i < m_all.edges.size(); ++i) {
            const Edge& e = m_all.edges[i];
            const std::int64_t worth = worthOf(e, m_twicePrice);
            if (m_taken[i] || worth <= 0) {
                continue;
            }
            const auto u = static_cast<std::size_t>(e.u);
            const auto v = static_cast<std::size_t>(e.v);
            std::int64_t slack = dual[u] + dual[v] - worth;
            if (slack < below) {
                slack += sharedBlossoms(u, v, blossoms);
            }
            if (slack < below) {
                m_wanted[u].emplace_back(slack, i);
                m_wanted[v].emplace_back(slack, i);
            }
        }
        return takeWanted(part);
    }

private:
    std::size_t takeWanted(Component& part) {
        const std::size_t before = part.edges.size();
        for (auto& wanted : m_wanted) {
            const std::size_t count = std::min(wanted.size(), kANode);
            const auto end = wanted.begin() + static_cast<std::ptrdiff_t>(count);
            std::partial_sort(wanted.begin(), end, wanted.end());
            for (auto it = wanted.begin(); it != end; ++it) {
                if (!std::exchange(m_taken[it->second], 1)) {
                    part.edges.push_back(m_all.edges[it->second]);
                }
            }
        }
        return part.edges.size() - before;
    }

    void findBlossoms(const std::vector<Blossom>& blossoms) {
        m_blossomsOf.assign(m_all.nodes.size(), {});
        for (std::size_t b = 0; b < blossoms.size(); ++b) {
            for (const int node : blossoms[b].nodes) {
                m_blossomsOf[static_cast<std::size_t>(node)].push_back(b);
            }
        }
    }

    std::int64_t sharedBlossoms(std::size_t u, std::size_t v, const std::vector<Blossom>& blossoms) const {
        std::int64_t sum = 0;
        auto a = m_blossomsOf[u].begin();
        auto b = m_blossomsOf[v].begin();
        while (a != m_blossomsOf[u].end() && b != m_blossomsOf[v].end()) {
            if (*a == *b) {
                sum += blossoms[*a].dual;
            }
            const bool stepA = *a <= *b;
            const bool stepB = *b <= *a;
            a += stepA;
            b += stepB;
        }
        return sum;
    }

    const Component& m_all;
    std::int64_t m_twicePrice;
    std::vector<char> m_taken;                                               // by edge
    std::vector<std::vector<std::pair<std::int64_t, std::size_t>>> m_wanted; // by node: slack, edge
    std::vector<std::vector<std::size_t>> m_blossomsOf;                      // by node, ascending
};

} // namespace

Matching solveComponent(const Component& component, std::int64_t twicePrice) {
    if (component.edges.size() <= kSparse * component.nodes.size()) {
        return solveAllEdges(component, twicePrice);
    }
    constexpr std::int64_t kAnySlack = INT64_MAX;
    Component part{component.nodes, {}};
    Chooser chooser(component, twicePrice);
    chooser.takeInto(part, firstDuals(component, twicePrice), {}, kAnySlack);
    Matching solved = solveAllEdges(part, twicePrice);
    while (chooser.takeInto(part, solved.nodeDual, solved.blossoms, 0) > 0) {
        solved = solveAllEdges(part, twicePrice);
    }
    return solved;
}

} // namespace core::pairing
