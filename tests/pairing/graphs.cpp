#include "tests/pairing/graphs.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace tests::pairing {

int pick(std::mt19937& random, int low, int high) {
    const auto span = static_cast<std::uint32_t>(high - low) + 1;
    return low + static_cast<int>(random() % span);
}

Graph randomGraph(unsigned seed, int mostNodes) {
    std::mt19937 random(seed);
    Graph graph{seed, pick(random, 0, mostNodes), {}};
    const int parts = pick(random, 1, 3);
    const int density = pick(random, 5, 100);
    const int low = pick(random, 0, 1) ? -3 : 1;
    const int high = pick(random, 0, 2) ? 4 : 1000;
    for (int u = 0; u < graph.nodes; ++u) {
        for (int v = u + 1; v < graph.nodes; ++v) {
            if (u % parts != v % parts || pick(random, 1, 100) > density) {
                continue;
            }
            const bool turned = pick(random, 0, 1) == 1;
            graph.edges.push_back({turned ? v : u, turned ? u : v, pick(random, low, high)});
            if (pick(random, 1, 20) == 1) {
                graph.edges.push_back({u, v, pick(random, low, high)});
            }
        }
    }
    for (std::size_t left = graph.edges.size(); left > 1; --left) {
        std::swap(graph.edges[left - 1], graph.edges[random() % left]);
    }
    return graph;
}

Graph circleGraph(unsigned seed, int circles) {
    std::mt19937 random(seed);
    Graph graph{seed, 0, {}};
    for (int circle = 0; circle < circles; ++circle) {
        const int length = 3 + 2 * pick(random, 0, 3);
        const int first = graph.nodes;
        graph.nodes += length;
        for (int i = 0; i < length; ++i) {
            graph.edges.push_back({first + i, first + (i + 1) % length, pick(random, 8, 12)});
        }
        if (length > 3) {
            graph.edges.push_back({first, first + 2, pick(random, 8, 12)});
        }
        if (first > 0) {
            graph.edges.push_back({pick(random, 0, first - 1), first, pick(random, 1, 12)});
        }
    }
    return graph;
}

Graph yardGraph(unsigned seed, int nodes) {
    std::mt19937 random(seed);
    Graph graph{seed, nodes, {}};
    std::vector<double> x;
    std::vector<double> y;
    for (int i = 0; i < nodes; ++i) {
        x.push_back(pick(random, 0, 60));
        y.push_back(pick(random, 0, 60));
    }
    for (std::size_t u = 0; u < x.size(); ++u) {
        for (std::size_t v = u + 1; v < x.size(); ++v) {
            const auto carry = static_cast<std::int64_t>(std::lround(std::hypot(x[u] - x[v], y[u] - y[v])));
            graph.edges.push_back({static_cast<int>(u), static_cast<int>(v), 60 - carry});
        }
    }
    return graph;
}

std::vector<core::pairing::Offer> randomOffers(std::mt19937& random, int guests, int hosts) {
    const int density = pick(random, 10, 100);
    const int high = pick(random, 0, 1) ? 2 : 500;
    std::vector<core::pairing::Offer> offers;
    for (int guest = 0; guest < guests; ++guest) {
        for (int host = 0; host < hosts; ++host) {
            if (pick(random, 1, 100) <= density) {
                offers.push_back({guest, host, pick(random, -high, high)});
            }
            if (pick(random, 1, 20) == 1) {
                offers.push_back({guest, host, pick(random, -high, high)});
            }
        }
    }
    for (std::size_t left = offers.size(); left > 1; --left) {
        std::swap(offers[left - 1], offers[random() % left]);
    }
    return offers;
}

std::vector<std::int64_t> greatestSums(const Graph& graph) {
    constexpr std::int64_t kNone = std::numeric_limits<std::int64_t>::min() / 2;
    const auto n = static_cast<std::size_t>(graph.nodes);
    std::vector<std::vector<std::int64_t>> weight(n, std::vector<std::int64_t>(n, kNone));
    for (const auto& e : graph.edges) {
        const auto u = static_cast<std::size_t>(std::min(e.u, e.v));
        const auto v = static_cast<std::size_t>(std::max(e.u, e.v));
        weight[u][v] = std::max(weight[u][v], e.weight);
    }
    // sums[set][k]: the greatest sum of k edges among the nodes of the set; its last node stays alone or is joined.
    std::vector<std::vector<std::int64_t>> sums(std::size_t{1} << n, std::vector<std::int64_t>(n / 2 + 1, kNone));
    sums[0][0] = 0;
    for (std::size_t set = 1; set < sums.size(); ++set) {
        std::size_t last = n - 1;
        while (!(set >> last & 1)) {
            --last;
        }
        const std::size_t rest = set ^ (std::size_t{1} << last);
        sums[set] = sums[rest];
        for (std::size_t other = 0; other < last; ++other) {
            if (!(rest >> other & 1) || weight[other][last] == kNone) {
                continue;
            }
            const auto& without = sums[rest ^ (std::size_t{1} << other)];
            for (std::size_t k = 1; k < without.size(); ++k) {
                if (without[k - 1] == kNone) {
                    continue;
                }
                sums[set][k] = std::max(sums[set][k], without[k - 1] + weight[other][last]);
            }
        }
    }
    std::vector<std::int64_t> found = sums.back();
    while (found.back() == kNone) {
        found.pop_back();
    }
    return found;
}

} // namespace tests::pairing
