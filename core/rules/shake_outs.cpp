#include "core/rules/shake_outs.h"

#include "core/pairing/assignment.h"
#include "core/pairing/proof.h"
#include "core/rules/limits.h"

#include <algorithm>
#include <cassert>

namespace core::rules {

namespace {

constexpr int kUnionDisturbed = fixed::kUnionDisturbed; // a union is left in peace where another host will do

struct Host {
    ColonyIx colony;
    Quarters strength;
    std::optional<size_t> ofUnion;
};

struct YardShakeOuts {
    std::vector<ColonyIx> guests;
    std::vector<Host> hosts;
};

bool canHost(const DayView& view, const ColonyFacts& f) {
    return !view.held(f.colony) && !f.layingWorkers && !f.lacksQueen && f.strengthClass &&
           *f.strengthClass != StrengthClass::ShakeOut;
}

std::vector<YardShakeOuts> byYard(const DayView& view, const std::vector<YardIx>& yards,
                                  const std::vector<Union>& unions, const std::vector<ColonyIx>& leftOut) {
    constexpr int kAlone = -1;
    std::vector<int> unionOf(view.facts.size(), kAlone);
    for (size_t i = 0; i < unions.size(); ++i)
        for (const ColonyIx c : {unions[i].moved, unions[i].host})
            unionOf[static_cast<size_t>(c.value)] = static_cast<int>(i);
    std::vector<YardShakeOuts> out(view.s.yards.size());
    for (const ColonyFacts& f : view.facts) {
        if (!std::binary_search(yards.begin(), yards.end(), f.yard) || !view.seasonsOf(f.colony).strength) continue;
        if (std::find(leftOut.begin(), leftOut.end(), f.colony) != leftOut.end()) continue;
        YardShakeOuts& yard = out[static_cast<size_t>(f.yard.value)];
        const int in = unionOf[static_cast<size_t>(f.colony.value)];
        if (in != kAlone) {
            const Union& united = unions[static_cast<size_t>(in)];
            if (united.host == f.colony) yard.hosts.push_back({f.colony, united.frames, static_cast<size_t>(in)});
        } else if (toShakeOut(view, f.colony)) {
            yard.guests.push_back(f.colony);
        } else if (canHost(view, f)) {
            yard.hosts.push_back({f.colony, *f.strength, std::nullopt});
        }
    }
    return out;
}

std::int64_t worth(const DayView& view, ColonyIx guest, const Host& host) {
    const Quarters more = *view.of(guest).strength;
    const std::int64_t carry =
        carryCost(view.placeOf(guest).at, view.placeOf(host.colony).at, view.s.settings.carryPerM);
    return view.value(host.strength + more) - view.value(host.strength) - carry - (host.ofUnion ? kUnionDisturbed : 0);
}

std::vector<pairing::Offer> offersOf(const DayView& view, const YardShakeOuts& yard, int guest) {
    std::vector<pairing::Offer> out;
    const ColonyIx colony = yard.guests[static_cast<size_t>(guest)];
    for (size_t h = 0; h < yard.hosts.size(); ++h)
        out.push_back({guest, static_cast<int>(h), worth(view, colony, yard.hosts[h])});
    return out;
}

/// A guest never needs more hosts than there are guests: of so many of its best, the others leave one free.
void addOffers(const DayView& view, const YardShakeOuts& yard, int guest, std::vector<pairing::Offer>& offers) {
    std::vector<pairing::Offer> mine = offersOf(view, yard, guest);
    const auto enough = static_cast<std::ptrdiff_t>(std::min(mine.size(), yard.guests.size()));
    std::partial_sort(mine.begin(), mine.begin() + enough, mine.end(), [](const auto& a, const auto& b) {
        return a.value != b.value ? a.value > b.value : a.host < b.host;
    });
    offers.insert(offers.end(), mine.begin(), mine.begin() + enough);
}

/// The best of all that could be offered, not only of what was.
[[maybe_unused]] bool isProvedBest(const DayView& view, const YardShakeOuts& yard,
                                   const pairing::Assignment& assigned) {
    std::vector<pairing::Offer> offers;
    for (int g = 0; g < static_cast<int>(yard.guests.size()); ++g) {
        const auto more = offersOf(view, yard, g);
        offers.insert(offers.end(), more.begin(), more.end());
    }
    const int perHost = view.s.settings.shakePerHost;
    return perHost == 0 || pairing::flawOf(perHost, offers, assigned).empty();
}

void assignYard(const DayView& view, const YardShakeOuts& yard, std::vector<ChosenShakeOut>& out) {
    if (yard.guests.empty() || yard.hosts.empty()) return;
    const auto guests = static_cast<int>(yard.guests.size());
    std::vector<pairing::Offer> offers;
    for (int g = 0; g < guests; ++g) addOffers(view, yard, g, offers);
    const pairing::Assignment assigned =
        pairing::assignGuests(guests, static_cast<int>(yard.hosts.size()), view.s.settings.shakePerHost, offers);
    assert(isProvedBest(view, yard, assigned));
    for (size_t g = 0; g < yard.guests.size(); ++g) {
        if (assigned.host[g] < 0) continue;
        const Host& host = yard.hosts[static_cast<size_t>(assigned.host[g])];
        out.push_back({yard.guests[g], host.colony, host.ofUnion});
    }
}

} // namespace

bool toShakeOut(const DayView& view, ColonyIx c) {
    const ColonyFacts& f = view.of(c);
    return view.seasonsOf(c).strength && f.strengthClass == StrengthClass::ShakeOut && !view.held(c) &&
           !f.layingWorkers;
}

std::vector<ChosenShakeOut> chooseShakeOuts(const DayView& view, const std::vector<YardIx>& yards,
                                            const std::vector<Union>& unions, const std::vector<ColonyIx>& leftOut) {
    std::vector<ChosenShakeOut> out;
    for (const YardShakeOuts& yard : byYard(view, yards, unions, leftOut)) assignYard(view, yard, out);
    std::sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.colony < b.colony; });
    return out;
}

} // namespace core::rules
