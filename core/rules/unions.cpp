#include "core/rules/unions.h"

#include "core/rules/pair_graph.h"
#include "core/rules/pairs.h"
#include "core/rules/pins.h"

#include <algorithm>

namespace core::rules {

namespace {

void addChosen(const PairGraph& candidates, const pairing::Matching& matching, std::vector<ChosenPair>& out,
               const DayView& view) {
    for (size_t u = 0; u < candidates.nodes.size(); ++u) {
        const int v = matching.mate[u];
        if (v < static_cast<int>(u)) continue;
        const ColonyIx a = candidates.nodes[u];
        const ColonyIx b = candidates.nodes[static_cast<size_t>(v)];
        out.push_back({a, b, *judgePair(view, a, b).gain, false});
    }
}

/// The first of the asked pair that is this pair.
std::optional<ColonyIx> askedOf(const std::vector<ColonyPair>& asked, const ChosenPair& pair) {
    for (const ColonyPair& p : asked)
        if (inOrder(p) == ColonyPair{pair.a, pair.b}) return p.first;
    return std::nullopt;
}

} // namespace

std::optional<int> leftIn(const DayView& view, const PlanRequest& request, const std::vector<ChosenPair>& pins,
                          YardIx yard) {
    for (const YardMost& most : request.mostIn) {
        if (most.yard != yard) continue;
        const auto here = [&](const ChosenPair& pin) { return view.of(pin.a).yard == yard; };
        return most.unions - static_cast<int>(std::count_if(pins.begin(), pins.end(), here));
    }
    return std::nullopt;
}

std::vector<ChosenPair> chooseUnions(const DayView& view, const std::vector<YardIx>& yards,
                                     const PlanRequest& request) {
    const std::vector<ChosenPair> pins = checkedPins(view, yards, request);
    std::vector<ChosenPair> out = pins;
    const ForbiddenPairs forbidden = forbiddenBy(request);
    const auto match = [&](const PairGraph& graph, std::optional<int> most) {
        const auto nodes = static_cast<int>(graph.nodes.size());
        addChosen(graph,
                  most ? pairing::maxWeightMatchingAtMost(nodes, graph.edges, *most)
                       : pairing::maxWeightMatching(nodes, graph.edges),
                  out, view);
    };
    PairGraph together; // with a limit all yards share it
    const auto free = freeColonies(view, yards, pins, request.leftOut);
    for (size_t yard = 0; yard < free.size(); ++yard) {
        PairGraph here;
        addPairs(view, free[yard], forbidden, request.most ? together : here);
        if (!request.most) match(here, leftIn(view, request, pins, {static_cast<qint32>(yard)}));
    }
    if (request.most) match(together, *request.most - static_cast<int>(pins.size()));
    for (ChosenPair& pair : out) {
        pair.host = askedOf(request.hosts, pair);
        pair.top = askedOf(request.tops, pair);
    }
    std::sort(out.begin(), out.end(), [](const ChosenPair& x, const ChosenPair& y) { return x.a < y.a; });
    return out;
}

} // namespace core::rules
