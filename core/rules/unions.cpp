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

std::vector<ChosenPair> chooseUnions(const DayView& view, const std::vector<YardIx>& yards,
                                     const PlanRequest& request) {
    std::vector<ChosenPair> out = checkedPins(view, yards, request);
    const ForbiddenPairs forbidden = forbiddenBy(request);
    PairGraph together; // with a limit all yards share it
    for (const auto& colonies : freeColonies(view, yards, out, request.leftOut)) {
        if (request.most) {
            addPairs(view, colonies, forbidden, together);
            continue;
        }
        PairGraph here;
        addPairs(view, colonies, forbidden, here);
        addChosen(here, pairing::maxWeightMatching(static_cast<int>(here.nodes.size()), here.edges), out, view);
    }
    if (request.most) {
        const int left = *request.most - static_cast<int>(out.size());
        addChosen(together,
                  pairing::maxWeightMatchingAtMost(static_cast<int>(together.nodes.size()), together.edges, left), out,
                  view);
    }
    for (ChosenPair& pair : out) {
        pair.host = askedOf(request.hosts, pair);
        pair.top = askedOf(request.tops, pair);
    }
    std::sort(out.begin(), out.end(), [](const ChosenPair& x, const ChosenPair& y) { return x.a < y.a; });
    return out;
}

} // namespace core::rules
