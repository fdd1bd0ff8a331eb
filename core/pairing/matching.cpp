#include "core/pairing/matching.h"

#include "core/pairing/component.h"
#include "core/pairing/proof.h"

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
        for (int& node : blossom.nodes) {
            node = component.nodes[at(node)];
        }
        whole.blossoms.push_back(std::move(blossom));
    }
}

std::int64_t weightOf(const std::vector<int>& mate, const std::vector<Edge>& edges) {
    std::vector<std::int64_t> best(mate.size(), 0); // by the smaller node of a pair; of parallel edges the best counts
    for (const Edge& e : edges) {
        if (mate[at(e.u)] != e.v) {
            continue;
        }
        std::int64_t& known = best[at(std::min(e.u, e.v))];
        known = std::max(known, e.weight);
    }
    std::int64_t sum = 0;
    for (const std::int64_t weight : best) {
        sum += weight;
    }
    return sum;
}

/// One component at two prices: at the low one the matchings are too large together, at the high one they are not.
struct Bracket {
    Matching low;
    Matching high;

    bool isSettled() const { return low.size() == high.size(); } ///< then either is greatest at each price between
};

int sizeOfAll(const std::vector<Matching>& parts) {
    int size = 0;
    for (const Matching& part : parts) {
        size += part.size();
    }
    return size;
}

std::vector<Matching> solveAt(std::int64_t twicePrice, const std::vector<Component>& components,
                              const std::vector<Bracket>& brackets) {
    std::vector<Matching> parts;
    parts.reserve(components.size());
    for (std::size_t i = 0; i < components.size(); ++i) {
        parts.push_back(brackets[i].isSettled() ? brackets[i].high : solveComponent(components[i], twicePrice));
    }
    return parts;
}

/// Narrows the price until the matchings below it have more than `most` edges together and those above it have not,
/// both being greatest at the price itself, which is returned. Prices of k + ½ are tried: there the size is
/// unambiguous.
///
/// Such a price exists and is whole, since the greatest sum with exactly k edges is whole and concave in k on any graph
/// (of two matchings with k - 1 and k + 1 edges, an alternating path makes two with k).
std::int64_t narrow(const std::vector<Component>& components, std::vector<Bracket>& brackets, int most,
                    std::int64_t greatest) {
    std::int64_t low = -1; // brackets[].low is at price 0 until a lower end is tried
    std::int64_t high = greatest;
    while (high - low > 1) {
        const std::int64_t middle = low + (high - low) / 2;
        std::vector<Matching> tried = solveAt(2 * middle + 1, components, brackets);
        const bool tooMany = sizeOfAll(tried) > most;
        for (std::size_t i = 0; i < components.size(); ++i) {
            (tooMany ? brackets[i].low : brackets[i].high) = std::move(tried[i]);
        }
        (tooMany ? low : high) = middle;
    }
    return high;
}

/// Makes `few` larger along alternating paths of `many` until it has `size` edges. Both are greatest at the same price,
/// so each path where they differ is worth nothing at that price, and the sum stays the greatest for its number of
/// edges.
void growTowards(const std::vector<int>& many, std::vector<int>& few, int missing) {
    std::vector<int> path;
    for (int start = 0; start < static_cast<int>(many.size()) && missing > 0; ++start) {
        if (many[at(start)] < 0 || few[at(start)] >= 0) {
            continue;
        }
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
        if (!grows) {
            continue;
        }
        for (const int changed : path) {
            few[at(changed)] = many[at(changed)];
        }
        --missing;
    }
    assert(missing == 0);
}

/// Fills the mates, duals and price of `whole`, given that the `free` matchings have more than `most` edges together.
void limit(const std::vector<Component>& components, std::vector<Matching> free, int most, Matching& whole) {
    std::int64_t greatest = 0;
    std::vector<Bracket> brackets(components.size());
    for (std::size_t i = 0; i < components.size(); ++i) {
        for (const Edge& e : components[i].edges) {
            greatest = std::max(greatest, e.weight);
        }
        brackets[i].low = std::move(free[i]);
    }
    for (std::size_t i = 0; i < components.size(); ++i) {
        brackets[i].high = solveComponent(components[i], 2 * greatest + 1); // no edge is worth that
    }

    const std::int64_t price = narrow(components, brackets, most, greatest);
    whole.price = price * kDualScale;
    std::vector<int> many = whole.mate;
    for (std::size_t i = 0; i < components.size(); ++i) {
        addMates(components[i], brackets[i].low, many);
        addMates(components[i], brackets[i].high, whole.mate);
        addDuals(components[i], solveComponent(components[i], 2 * price), whole);
    }
    growTowards(many, whole.mate, most - whole.size());
}

} // namespace

int Matching::size() const {
    return static_cast<int>(std::count_if(mate.begin(), mate.end(), [](int partner) { return partner >= 0; })) / 2;
}

Matching maxWeightMatching(int nodes, const std::vector<Edge>& edges) {
    return maxWeightMatchingAtMost(nodes, edges, nodes);
}

Matching maxWeightMatchingAtMost(int nodes, const std::vector<Edge>& edges, int most) {
    assert(most >= 0);
    const std::vector<Component> components = positiveComponents(nodes, edges);
    std::vector<Matching> free;
    free.reserve(components.size());
    for (const Component& component : components) {
        free.push_back(solveComponent(component, 0));
    }

    Matching whole = nobodyMatched(nodes);
    if (sizeOfAll(free) <= most) {
        for (std::size_t i = 0; i < components.size(); ++i) {
            addMates(components[i], free[i], whole.mate);
            addDuals(components[i], free[i], whole);
        }
    } else {
        limit(components, std::move(free), most, whole);
    }
    whole.weight = weightOf(whole.mate, edges);
    assert(flawOf(nodes, edges, most, whole).empty());
    return whole;
}

} // namespace core::pairing
