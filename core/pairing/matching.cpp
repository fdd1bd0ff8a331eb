#include "core/pairing/matching.h"

#include "core/pairing/component.h"

#include <algorithm>
#include <cassert>

namespace core::pairing {
namespace {

std::size_t at(int node) { return static_cast<std::size_t>(node); }

Matching nobodyMatched(int nodes) {
    Matching matching;
    matching.mate.assign(at(nodes), -1);
    matching.nodeDual.assign(at(nodes), 0);
    matching.dualScale = kDualScale;
    return matching;
}

void addMates(const Component& component, const Matching& part, std::vector<int>& mate) {
    for (std::size_t local = 0; local < component.nodes.size(); ++local) {
        const int partner = part.mate[local];
        mate[at(component.nodes[local])] = partner < 0 ? -1 : component.nodes[at(partner)];
    }
}

void addDuals(const Component& component, const Matching& part, Matching& whole) {
    for (std::size_t local = 0; local < component.nodes.size(); ++local) {
        whole.nodeDual[at(component.nodes[local])] = part.nodeDual[local];
    }
    for (Blossom blossom : part.blossoms) {
        for (int& node : blossom.nodes) { node = component.nodes[at(node)]; }
        whole.blossoms.push_back(std::move(blossom));
    }
}

std::int64_t weightOf(const std::vector<int>& mate, const std::vector<Edge>& edges) {
    std::vector<std::int64_t> best(mate.size(), 0); // by the smaller node of a pair; of parallel edges the best counts
    for (const Edge& e : edges) {
        if (mate[at(e.u)] != e.v) { continue; }
        std::int64_t& known = best[at(std::min(e.u, e.v))];
        known = std::max(known, e.weight);
    }
    std::int64_t sum = 0;
    for (const std::int64_t weight : best) { sum += weight; }
    return sum;
}

/// One component between two prices: at the low one the matching is too large for the whole, at the high one not.
struct Bracket {
    Matching low;
    Matching high;

    bool isSettled() const { return low.size() == high.size(); } ///< then it is the same at each price between
};

int sizeOfAll(const std::vector<Matching>& parts) {
    int size = 0;
    for (const Matching& part : parts) { size += part.size(); }
    return size;
}

/// Narrows the price until the matchings just below it have more than `most` edges together and those just above it have
/// not. Half-integer prices are tried, where the size is unambiguous, so no tie is ever met. Returns the (integer) price.
///
/// Why this finds every N: the greatest sum with exactly k edges is concave in k on any graph, so the price at which the
/// N-th edge is just worth taking exists, and it is an integer since the sums are.
std::int64_t narrow(const std::vector<Component>& components, std::vector<Bracket>& brackets, int most,
                    std::int64_t greatest) {
    std::int64_t low = 0; // tried as low + ½ and high + ½
    std::int64_t high = greatest;
    while (high - low > 1) {
        const std::int64_t middle = low + (high - low) / 2;
        std::vector<Matching> tried;
        tried.reserve(components.size());
        for (std::size_t i = 0; i < components.size(); ++i) {
            tried.push_back(brackets[i].isSettled() ? brackets[i].high
                                                    : solveComponent(components[i], 2 * middle + 1));
        }
        const bool tooMany = sizeOfAll(tried) > most;
        for (std::size_t i = 0; i < components.size(); ++i) {
            (tooMany ? brackets[i].low : brackets[i].high) = std::move(tried[i]);
        }
        (tooMany ? low : high) = middle;
    }
    return high;
}

/// Makes `few` larger along alternating paths of `many` until it has `size` edges. Both are greatest at the same price, so
/// each path where they differ is worth nothing at that price, and the sum stays the greatest for its number of edges.
void growTowards(const std::vector<int>& many, std::vector<int>& few, int missing) {
    std::vector<int> path;
    for (int start = 0; start < static_cast<int>(many.size()) && missing > 0; ++start) {
        if (many[at(start)] < 0 || few[at(start)] >= 0) { continue; }
        path.clear();
        int node = start;
        bool grows = false;
        while (node >= 0 && many[at(node)] >= 0) {
            const int partner = many[at(node)];
            path.push_back(node);
            path.push_back(partner);
            node = few[at(partner)];
            grows = node < 0;
        }
        if (!grows) { continue; }
        for (const int changed : path) { few[at(changed)] = many[at(changed)]; }
        --missing;
    }
    assert(missing == 0);
}

} // namespace

int Matching::size() const {
    return static_cast<int>(std::count_if(mate.begin(), mate.end(), [](int partner) { return partner >= 0; })) / 2;
}

Matching maxWeightMatching(int nodes, const std::vector<Edge>& edges) {
    Matching whole = nobodyMatched(nodes);
    for (const Component& component : positiveComponents(nodes, edges)) {
        const Matching part = solveComponent(component, 0);
        addMates(component, part, whole.mate);
        addDuals(component, part, whole);
    }
    whole.weight = weightOf(whole.mate, edges);
    return whole;
}

Matching maxWeightMatchingAtMost(int nodes, const std::vector<Edge>& edges, int most) {
    assert(most >= 0);
    Matching whole = maxWeightMatching(nodes, edges);
    if (whole.size() <= most) { return whole; }

    const std::vector<Component> components = positiveComponents(nodes, edges);
    std::int64_t greatest = 0;
    for (const Edge& e : edges) { greatest = std::max(greatest, e.weight); }
    std::vector<Bracket> brackets(components.size());
    int fewest = 0;
    for (std::size_t i = 0; i < components.size(); ++i) {
        brackets[i].low = solveComponent(components[i], 1);
        brackets[i].high = solveComponent(components[i], 2 * greatest + 1);
        fewest += brackets[i].low.size();
    }
    if (fewest <= most) { // edges that add nothing were all that was too many; the duals stand as they are
        for (std::size_t i = 0; i < components.size(); ++i) { addMates(components[i], brackets[i].low, whole.mate); }
        return whole;
    }

    const std::int64_t price = narrow(components, brackets, most, greatest);
    Matching limited = nobodyMatched(nodes);
    limited.price = price * kDualScale;
    std::vector<int> many = limited.mate;
    for (std::size_t i = 0; i < components.size(); ++i) {
        addMates(components[i], brackets[i].low, many);
        addMates(components[i], brackets[i].high, limited.mate);
        addDuals(components[i], solveComponent(components[i], 2 * price), limited);
    }
    growTowards(many, limited.mate, most - limited.size());
    limited.weight = weightOf(limited.mate, edges);
    return limited;
}

} // namespace core::pairing
