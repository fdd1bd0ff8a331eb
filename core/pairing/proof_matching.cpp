#include "core/pairing/proof.h"

#include <algorithm>

namespace core::pairing {
namespace {

std::size_t at(int node) { return static_cast<std::size_t>(node); }

std::string named(const Edge& e) { return "edge " + std::to_string(e.u) + "-" + std::to_string(e.v); }

class MatchingProof {
public:
    MatchingProof(int nodes, const std::vector<Edge>& edges, int most, const Matching& matching)
        : m_nodes(at(nodes)), m_edges(edges), m_most(most), m_matching(matching) {}

    std::string flaw() {
        for (std::string (MatchingProof::*part)() :
             {&MatchingProof::flawOfMates, &MatchingProof::flawOfWeight, &MatchingProof::flawOfDuals,
              &MatchingProof::flawOfBlossoms, &MatchingProof::flawOfCover, &MatchingProof::flawOfSums}) {
            if (std::string found = (this->*part)(); !found.empty()) {
                return found;
            }
        }
        return {};
    }

private:
    std::string flawOfMates() {
        if (m_matching.mate.size() != m_nodes) {
            return "not a mate for each node";
        }
        for (std::size_t node = 0; node < m_nodes; ++node) {
            const int mate = m_matching.mate[node];
            if (mate < -1 || mate >= static_cast<int>(m_nodes) || at(mate) == node) {
                return "no mate of node " + std::to_string(node);
            }
            if (mate >= 0 && at(m_matching.mate[at(mate)]) != node) {
                return "node " + std::to_string(node) + " is not its mate's mate";
            }
        }
        return m_matching.size() > m_most ? "more edges than allowed" : "";
    }

    /// Each pair is an edge worth having, and the weight is their sum, of parallel edges the best.
    std::string flawOfWeight() {
        m_best.assign(m_nodes, 0);
        for (const Edge& e : m_edges) {
            if (m_matching.mate[at(e.u)] == e.v) {
                std::int64_t& best = m_best[at(std::min(e.u, e.v))];
                best = std::max(best, e.weight);
            }
        }
        std::int64_t sum = 0;
        for (std::size_t node = 0; node < m_nodes; ++node) {
            if (m_matching.mate[node] > static_cast<int>(node) && m_best[node] == 0) {
                return "node " + std::to_string(node) + " and its mate have no edge worth having";
            }
            sum += m_best[node];
        }
        return sum == m_matching.weight ? "" : "the weight is not the sum over the chosen edges";
    }

    std::string flawOfDuals() {
        const auto isNegative = [](std::int64_t dual) { return dual < 0; };
        const auto& duals = m_matching.nodeDual;
        if (duals.size() != m_nodes || m_matching.dualScale <= 0) {
            return "not a dual for each node";
        }
        return m_matching.price < 0 || std::any_of(duals.begin(), duals.end(), isNegative) ? "a dual below 0" : "";
    }

    std::string flawOfBlossoms() {
        m_blossomsOf.assign(m_nodes, {});
        for (std::size_t b = 0; b < m_matching.blossoms.size(); ++b) {
            const Blossom& blossom = m_matching.blossoms[b];
            if (blossom.dual <= 0 || blossom.nodes.size() < 3 || blossom.nodes.size() % 2 == 0) {
                return "a blossom without worth, or not odd";
            }
            int last = -1;
            for (const int node : blossom.nodes) {
                if (node <= last || node >= static_cast<int>(m_nodes)) {
                    return "a blossom's nodes do not ascend";
                }
                m_blossomsOf[at(node)].push_back(b);
                last = node;
            }
        }
        return {};
    }

    std::string flawOfCover() {
        for (const Edge& e : m_edges) {
            const std::int64_t slack = cover(e) - m_matching.dualScale * e.weight;
            if (slack < 0) {
                return named(e) + " is not covered";
            }
            if (slack > 0 && m_matching.mate[at(e.u)] == e.v && m_best[at(std::min(e.u, e.v))] == e.weight) {
                return named(e) + " is chosen, but not tight";
            }
        }
        return {};
    }

    std::int64_t cover(const Edge& e) const {
        std::int64_t sum = m_matching.nodeDual[at(e.u)] + m_matching.nodeDual[at(e.v)] + m_matching.price;
        const std::vector<std::size_t>& ofV = m_blossomsOf[at(e.v)];
        for (const std::size_t b : m_blossomsOf[at(e.u)]) {
            sum += std::binary_search(ofV.begin(), ofV.end(), b) ? m_matching.blossoms[b].dual : 0;
        }
        return sum;
    }

    std::string flawOfSums() {
        std::int64_t sum = m_matching.price == 0 ? 0 : m_matching.price * m_most;
        for (const std::int64_t dual : m_matching.nodeDual) {
            sum += dual;
        }
        for (const Blossom& blossom : m_matching.blossoms) {
            sum += blossom.dual * static_cast<std::int64_t>(blossom.nodes.size() / 2);
        }
        return sum == m_matching.dualScale * m_matching.weight ? "" : "the duals' sum is not the weight";
    }

    std::size_t m_nodes;
    const std::vector<Edge>& m_edges;
    int m_most;
    const Matching& m_matching;
    std::vector<std::int64_t> m_best;                   ///< weight of a chosen edge, by its smaller node
    std::vector<std::vector<std::size_t>> m_blossomsOf; ///< by node, ascending
};

} // namespace

std::string flawOf(int nodes, const std::vector<Edge>& edges, int most, const Matching& matching) {
    return MatchingProof(nodes, edges, most, matching).flaw();
}

} // namespace core::pairing
