#include "core/rules/hold_order.h"

#include <algorithm>
#include <map>

namespace core::rules {

namespace {

bool released(const Snapshot& s, const SnapResult& order) {
    return std::any_of(s.results.begin(), s.results.end(), [&](const SnapResult& r) {
        return r.verdict == Verdict::Release && r.disease == order.disease && r.colony == order.colony &&
               r.yard == order.yard && r.day >= order.day;
    });
}

// The colonies an order itself meets, each with its first day.
std::map<ColonyIx, Day> metBy(const Evidence& e, const SnapResult& order) {
    std::map<ColonyIx, Day> met;
    if (order.colony.value >= 0) {
        const SnapColony& named = e.s.colony(order.colony);
        met[order.colony] = named.ended && *named.ended < order.day ? *named.ended : order.day;
        return met;
    }
    for (const YardStay& stay : e.standing.in(order.yard)) {
        if (stay.until < order.day) continue;
        const Day first = std::max(stay.since, order.day);
        const auto [known, fresh] = met.try_emplace(stay.colony, first);
        if (!fresh) known->second = std::min(known->second, first);
    }
    return met;
}

void traceOrder(const Evidence& e, Spread& spread, const SnapResult& order, std::vector<OrderFact>& facts) {
    const auto met = metBy(e, order);
    std::map<ColonyIx, Gift> received; // the first that carried the order
    for (const auto& [colony, first] : met) spread.touch(colony, first);
    spread.run([](ColonyIx, Day) { return true; },
               [&](const Gift& gift) { return gift.beesOrComb() && received.try_emplace(gift.to, gift).second; });
    for (const auto& [colony, first] : met)
        if (e.s.colony(colony).living())
            facts.push_back({colony, &order, order.yard.value >= 0 ? std::optional(first) : std::nullopt, {}});
    for (const auto& [colony, gift] : received) {
        if (!e.s.colony(colony).living() || met.contains(colony)) continue;
        OrderFact fact{colony, &order, std::nullopt, {gift}};
        for (;;) {
            const Gift& last = fact.chain.back();
            const auto own = met.find(last.from);
            if (own != met.end() && own->second <= last.day) {
                if (order.yard.value >= 0) fact.stood = own->second;
                break;
            }
            fact.chain.push_back(received.at(last.from));
        }
        facts.push_back(std::move(fact));
    }
}

} // namespace

void traceOrders(const Evidence& e, Spread& spread, std::vector<OrderFact>& facts) {
    for (const SnapResult& r : e.s.results)
        if (r.verdict == Verdict::Order && !released(e.s, r)) traceOrder(e, spread, r, facts);
}

} // namespace core::rules
