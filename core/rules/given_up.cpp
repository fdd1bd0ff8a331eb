#include "core/rules/given_up.h"

#include "core/rules/objections.h"
#include "core/rules/pair_graph.h"
#include "core/rules/pairs.h"
#include "core/rules/pins.h"

#include <algorithm>

namespace core::rules {

namespace {

constexpr size_t kNeighbours = 3;

/// The pairs of one yard (with a limit on all unions: of all yards) and the best that can be made of them.
class Rest {
public:
    Rest(PairGraph graph, std::optional<int> most) : m_graph(std::move(graph)), m_most(most) {
        m_best = matching(m_graph.edges).weight;
    }

    /// Fills in the partner, if there is one.
    void find(GivenUp& out) const {
        const auto node = std::find(m_graph.nodes.begin(), m_graph.nodes.end(), out.colony);
        if (node == m_graph.nodes.end()) return;
        const auto own = static_cast<int>(node - m_graph.nodes.begin());
        const std::int64_t bonus = m_best + 1; // more than any set can lose: the colony's best pair is in
        std::vector<pairing::Edge> edges = m_graph.edges;
        for (pairing::Edge& e : edges)
            if (e.u == own || e.v == own) e.weight += bonus;
        const pairing::Matching with = matching(edges);
        const int mate = with.mate[static_cast<size_t>(own)];
        if (mate < 0) return;
        out.partner = m_graph.nodes[static_cast<size_t>(mate)];
        out.gain = static_cast<int>(weightOf(own, mate));
        out.lost = m_best - (with.weight - bonus - out.gain);
    }

private:
    pairing::Matching matching(const std::vector<pairing::Edge>& edges) const {
        const auto nodes = static_cast<int>(m_graph.nodes.size());
        return m_most ? pairing::maxWeightMatchingAtMost(nodes, edges, *m_most)
                      : pairing::maxWeightMatching(nodes, edges);
    }
    std::int64_t weightOf(int u, int v) const {
        const auto [first, second] = std::minmax(u, v);
        for (const pairing::Edge& e : m_graph.edges)
            if (e.u == first && e.v == second) return e.weight;
        return 0;
    }

    PairGraph m_graph;
    std::optional<int> m_most;
    std::int64_t m_best = 0;
};

std::vector<BarredNeighbour> neighbours(const DayView& view, ColonyIx c) {
    std::vector<BarredNeighbour> out;
    for (const ColonyFacts& f : view.facts)
        if (f.colony != c && f.yard == view.of(c).yard)
            out.push_back({f.colony, squaredDistance(view.placeOf(c).at, view.placeOf(f.colony).at), {}});
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.squaredMm < b.squaredMm; });
    if (out.size() > kNeighbours) out.resize(kNeighbours);
    for (BarredNeighbour& n : out) {
        const PairJudgement judged = judgePair(view, c, n.colony);
        for (int part = 1; part <= 10 && n.against.rule.isEmpty(); ++part)
            if (judged.bars(part)) n.against = objection(view, c, n.colony, judged, part);
    }
    return out;
}

std::optional<int> left(const DayView& view, const PlanRequest& request, const std::vector<ChosenPair>& pins,
                        YardIx yard) {
    if (!request.most) return leftIn(view, request, pins, yard);
    return *request.most - static_cast<int>(pins.size());
}

} // namespace

std::vector<GivenUp> givenUp(const DayView& view, const std::vector<YardIx>& yards, const PlanRequest& request,
                             const std::vector<ColonyIx>& colonies) {
    const std::vector<ChosenPair> pins = checkedPins(view, yards, request);
    const ForbiddenPairs forbidden = forbiddenBy(request);
    const auto free = freeColonies(view, yards, pins, request.leftOut);
    std::vector<std::optional<Rest>> rests(request.most ? 1 : free.size());
    const auto restOf = [&](YardIx yard) -> const Rest& {
        auto& rest = rests[request.most ? 0 : static_cast<size_t>(yard.value)];
        if (rest) return *rest;
        PairGraph graph;
        for (size_t i = 0; i < free.size(); ++i)
            if (request.most || static_cast<qint32>(i) == yard.value) addPairs(view, free[i], forbidden, graph);
        return rest.emplace(std::move(graph), left(view, request, pins, yard));
    };
    std::vector<GivenUp> out;
    for (const ColonyIx c : colonies) {
        GivenUp given;
        given.colony = c;
        restOf(view.of(c).yard).find(given);
        if (!given.partner) given.nearest = neighbours(view, c);
        out.push_back(std::move(given));
    }
    return out;
}

std::vector<GivenUp> givenUp(const Snapshot& s, const std::vector<ColonyFacts>& facts, const Plan& plan,
                             const std::vector<ColonyIx>& colonies) {
    if (colonies.empty()) return {};
    PlanRequest request;
    for (const Union& u : plan.unions)
        if (u.pinned) request.pins.push_back({u.moved, u.host});
    return givenUp(viewOf(s, facts, plan.holds), plan.yards, request, colonies);
}

namespace {

/// What bars a union, in few words.
const char* shortly(const QString& rule) {
    static constexpr const char* kWords[] = {"Not with %1: not as you asked.",
                                             "Not with %1: another yard.",
                                             "Not with %1: one of the two is held.",
                                             "Not with %1: one of the two has laying workers.",
                                             "Not with %1: one of the two has no count to go by, or too few bees.",
                                             "Not with %1: both lack a queen.",
                                             "Not with %1: other boxes.",
                                             "Not with %1: one of the two does not fit into one box.",
                                             "Not with %1: together more than two boxes hold.",
                                             "Not with %1: not the season, or neither is weak, or one is strong or has "
                                             "a virgin.",
                                             "Not with %1: too little gain."};
    return kWords[rule.section(u'.', 2, 2).toInt()];
}

} // namespace

Sentences sentencesOf(const Snapshot& s, const GivenUp& given) {
    const auto name = [&](ColonyIx c) { return s.colony(c).shown; };
    if (given.partner)
        return {
            {"The best union it could have had: with %1, gain %2; all the others would then gain %3 less, so that %4 "
             "thousandths of a spring colony would be lost in all (by value tables that are an assumption).",
             {name(*given.partner), QString::number(given.gain), QString::number(given.lost),
              QString::number(given.lost - given.gain)}}};
    Sentences out{{given.nearest.empty() ? "No other colony stands in its yard." : "No union was possible.", {}}};
    for (const BarredNeighbour& n : given.nearest) out.push_back({shortly(n.against.rule), {name(n.colony)}});
    return out;
}

} // namespace core::rules
