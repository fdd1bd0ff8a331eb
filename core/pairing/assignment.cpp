#include "core/pairing/assignment.h"

#include "core/pairing/proof.h"

#include <lemon/network_simplex.h>
#include <lemon/smart_graph.h>

#include <algorithm>
#include <cassert>
#include <cstdlib>

namespace core::pairing {
namespace {

using Network = lemon::SmartDigraph;
using Simplex = lemon::NetworkSimplex<Network, int, std::int64_t>;

/// Guests (supply 1) → hosts → sink, and guests → sink at the price of `bonus` for staying without a host.
struct Flow {
    Network network;
    Network::ArcMap<int> room{network};
    Network::ArcMap<std::int64_t> cost{network};
    Network::NodeMap<int> supply{network};
    std::vector<Network::Node> guest;
    std::vector<Network::Node> host;
    Network::Node sink;
    std::vector<Network::Arc> taken; ///< by offer

    void addArc(Network::Node from, Network::Node to, int atMost, std::int64_t price) {
        const Network::Arc arc = network.addArc(from, to);
        room[arc] = atMost;
        cost[arc] = price;
    }
};

/// More than placing one guest more can cost the others: an alternating path changes each guest's offer at most once.
std::int64_t bonusFor(int guests, const std::vector<Offer>& offers) {
    std::int64_t largest = 0;
    for (const Offer& offer : offers) {
        largest = std::max<std::int64_t>(largest, std::abs(offer.value));
    }
    return (2 * static_cast<std::int64_t>(guests) + 1) * largest + 1;
}

void build(Flow& flow, int guests, int hosts, int perHost, const std::vector<Offer>& offers, std::int64_t bonus) {
    for (int i = 0; i < guests; ++i) {
        flow.guest.push_back(flow.network.addNode());
    }
    for (int i = 0; i < hosts; ++i) {
        flow.host.push_back(flow.network.addNode());
    }
    flow.sink = flow.network.addNode();
    for (const Network::Node guest : flow.guest) {
        flow.supply[guest] = 1;
        flow.addArc(guest, flow.sink, guests, bonus);
    }
    flow.supply[flow.sink] = -guests;
    for (const Network::Node host : flow.host) {
        flow.supply[host] = 0;
        flow.addArc(host, flow.sink, perHost, 0);
    }
    // Room for all guests on each arc from a guest: never full, so that its reduced cost is never negative.
    for (const Offer& offer : offers) {
        flow.addArc(flow.guest[static_cast<std::size_t>(offer.guest)], flow.host[static_cast<std::size_t>(offer.host)],
                    guests + 1, -offer.value);
        flow.taken.push_back(Network::arcFromId(flow.network.maxArcId()));
    }
}

void readDuals(const Simplex& simplex, const Flow& flow, Assignment& answer) {
    const std::int64_t ground = simplex.potential(flow.sink);
    for (std::size_t i = 0; i < flow.guest.size(); ++i) {
        answer.guestDual[i] = answer.bonus + simplex.potential(flow.guest[i]) - ground;
    }
    for (std::size_t i = 0; i < flow.host.size(); ++i) {
        answer.hostDual[i] = std::max<std::int64_t>(0, ground - simplex.potential(flow.host[i]));
    }
}

} // namespace

Assignment assignGuests(int guests, int hosts, int perHost, const std::vector<Offer>& offers) {
    assert(guests >= 0 && hosts >= 0 && perHost >= 0 && guests + hosts <= 100'000);
    Assignment answer;
    answer.host.assign(static_cast<std::size_t>(guests), -1);
    answer.guestDual.assign(static_cast<std::size_t>(guests), 0);
    answer.hostDual.assign(static_cast<std::size_t>(hosts), 0);
    answer.bonus = bonusFor(guests, offers);
    if (guests == 0) {
        return answer;
    }

    Flow flow;
    build(flow, guests, hosts, perHost, offers, answer.bonus);
    Simplex simplex(flow.network);
    simplex.upperMap(flow.room).costMap(flow.cost).supplyMap(flow.supply);
    [[maybe_unused]] const auto outcome = simplex.run();
    assert(outcome == Simplex::OPTIMAL); // everyone staying without a host is always allowed

    for (std::size_t i = 0; i < offers.size(); ++i) {
        if (simplex.flow(flow.taken[i]) == 0) {
            continue;
        }
        answer.host[static_cast<std::size_t>(offers[i].guest)] = offers[i].host;
        answer.value += offers[i].value;
        ++answer.placed;
    }
    readDuals(simplex, flow, answer);
    assert(flawOf(perHost, offers, answer).empty());
    return answer;
}

} // namespace core::pairing
