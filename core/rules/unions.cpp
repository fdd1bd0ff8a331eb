#include "core/rules/unions.h"

#include "core/pairing/matching.h"
#include "core/rules/pairs.h"
#include "core/rules/pins.h"

#include <algorithm>
#include <set>

namespace core::rules {

namespace {

/// The pairs that may unite, as a graph: node n is the colony nodes[n].
struct Candidates {
    std::vector<ColonyIx> nodes;
    std::vector<pairing::Edge> edges;
};

using Forbidden = std::set<ColonyPair>;

void addPairsOfYard(const DayView& view, const std::vector<ColonyIx>& colonies, const Forbidden& forbidden,
                    Candidates& out) {
    const auto first = static_cast<int>(out.nodes.size());
    const auto count = static_cast<int>(colonies.size());
    out.nodes.insert(out.nodes.end(), colonies.begin(), colonies.end());
    for (int u = 0; u < count; ++u)
        for (int v = u + 1; v < count; ++v) {
            const ColonyIx a = colonies[static_cast<size_t>(u)];
            const ColonyIx b = colonies[static_cast<size_t>(v)];
            const PairJudgement judged = judgePair(view, a, b);
            if (!judged.may() || *judged.gain <= 0 || forbidden.contains({a, b})) continue;
            out.edges.push_back({first + u, first + v, *judged.gain});
        }
}

void addChosen(const Candidates& candidates, const pairing::Matching& matching, std::vector<ChosenPair>& out,
               const DayView& view) {
    for (size_t u = 0; u < candidates.nodes.size(); ++u) {
        const int v = matching.mate[u];
        if (v < static_cast<int>(u)) continue;
        const ColonyIx a = candidates.nodes[u];
        const ColonyIx b = candidates.nodes[static_cast<size_t>(v)];
        out.push_back({a, b, *judgePair(view, a, b).gain, false});
    }
}

/// Of each yard asked for, the colonies that may take part and are not pinned, in natural order.
std::vector<std::vector<ColonyIx>> freeColonies(const DayView& view, const std::vector<YardIx>& yards,
                                                const std::vector<ChosenPair>& pins) {
    std::set<ColonyIx> pinned;
    for (const ChosenPair& pin : pins) pinned.insert({pin.a, pin.b});
    std::vector<std::vector<ColonyIx>> out(view.s.yards.size());
    for (const ColonyFacts& f : view.facts)
        if (std::binary_search(yards.begin(), yards.end(), f.yard) && mayTakePart(view, f.colony) &&
            !pinned.contains(f.colony))
            out[static_cast<size_t>(f.yard.value)].push_back(f.colony);
    return out;
}

} // namespace

std::vector<ChosenPair> chooseUnions(const DayView& view, const std::vector<YardIx>& yards,
                                     const PlanRequest& request) {
    std::vector<ChosenPair> out = checkedPins(view, yards, request);
    Forbidden forbidden;
    for (const ColonyPair& pair : request.forbids) forbidden.insert(inOrder(pair));
    Candidates together; // with a limit all yards share it
    for (const auto& colonies : freeColonies(view, yards, out)) {
        if (request.most) {
            addPairsOfYard(view, colonies, forbidden, together);
            continue;
        }
        Candidates here;
        addPairsOfYard(view, colonies, forbidden, here);
        addChosen(here, pairing::maxWeightMatching(static_cast<int>(here.nodes.size()), here.edges), out, view);
    }
    if (request.most) {
        const int left = *request.most - static_cast<int>(out.size());
        addChosen(together,
                  pairing::maxWeightMatchingAtMost(static_cast<int>(together.nodes.size()), together.edges, left), out,
                  view);
    }
    std::sort(out.begin(), out.end(), [](const ChosenPair& x, const ChosenPair& y) { return x.a < y.a; });
    return out;
}

} // namespace core::rules
