#include "core/rules/pair_graph.h"

#include "core/rules/pairs.h"
#include "core/rules/pins.h"

#include <algorithm>

namespace core::rules {

ForbiddenPairs forbiddenBy(const PlanRequest& request) {
    ForbiddenPairs forbidden;
    for (const ColonyPair& pair : request.forbids) forbidden.insert(inOrder(pair));
    return forbidden;
}

void addPairs(const DayView& view, const std::vector<ColonyIx>& colonies, const ForbiddenPairs& forbidden,
              PairGraph& graph) {
    const auto first = static_cast<int>(graph.nodes.size());
    const auto count = static_cast<int>(colonies.size());
    graph.nodes.insert(graph.nodes.end(), colonies.begin(), colonies.end());
    for (int u = 0; u < count; ++u)
        for (int v = u + 1; v < count; ++v) {
            const ColonyIx a = colonies[static_cast<size_t>(u)];
            const ColonyIx b = colonies[static_cast<size_t>(v)];
            const PairJudgement judged = judgePair(view, a, b);
            if (!judged.may() || *judged.gain <= 0 || forbidden.contains({a, b})) continue;
            graph.edges.push_back({first + u, first + v, *judged.gain});
        }
}

std::vector<std::vector<ColonyIx>> freeColonies(const DayView& view, const std::vector<YardIx>& yards,
                                                const std::vector<ChosenPair>& pins,
                                                const std::vector<ColonyIx>& leftOut) {
    std::set<ColonyIx> taken(leftOut.begin(), leftOut.end());
    for (const ChosenPair& pin : pins) taken.insert({pin.a, pin.b});
    std::vector<std::vector<ColonyIx>> out(view.s.yards.size());
    for (const ColonyFacts& f : view.facts)
        if (std::binary_search(yards.begin(), yards.end(), f.yard) && mayTakePart(view, f.colony) &&
            !taken.contains(f.colony))
            out[static_cast<size_t>(f.yard.value)].push_back(f.colony);
    return out;
}

} // namespace core::rules
