#include "tests/pairing/greedy.h"

#include <algorithm>
#include <tuple>

namespace tests::pairing {

std::int64_t greedySum(int nodes, std::vector<core::pairing::Edge> edges) {
    for (auto& e : edges) {
        std::tie(e.u, e.v) = std::minmax({e.u, e.v});
    }
    std::sort(edges.begin(), edges.end(), [](const auto& a, const auto& b) {
        return std::make_tuple(-a.weight, a.u, a.v) < std::make_tuple(-b.weight, b.u, b.v);
    });
    std::vector<char> taken(static_cast<std::size_t>(nodes), 0);
    std::int64_t sum = 0;
    for (const auto& e : edges) {
        char& u = taken[static_cast<std::size_t>(e.u)];
        char& v = taken[static_cast<std::size_t>(e.v)];
        if (e.weight > 0 && !u && !v) {
            u = v = 1;
            sum += e.weight;
        }
    }
    return sum;
}

} // namespace tests::pairing
