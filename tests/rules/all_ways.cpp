#include "tests/rules/all_ways.h"

#include <algorithm>
#include <map>

namespace tests::rules {

namespace {

constexpr int kAlive[] = {0, 50, 120, 300, 480, 640, 750, 820, 880, 905, 920, 928, 934};
constexpr int kDivided[] = {0, 0, 0, 0, 0, 0, 0, 400, 800, 900, 1000, 1000, 1000};

int at(const int (&table)[13], int q) {
    if (q >= 48) return table[12];
    const int next = q / 4 + 1;
    return (table[q / 4] * (4 - q % 4) + table[next] * (q % 4) + 2) / 4;
}

bool shakeOutClass(const PlainColony& c) { return c.quarters >= 1 && c.quarters <= 8; }
bool weak(const PlainColony& c) { return c.quarters >= 9 && c.quarters <= 19; }
bool medium(const PlainColony& c) { return c.quarters >= 20 && c.quarters <= 31; }

bool oneBox(const PlainColony& c) { return c.boxes == 1 || (c.quarters <= c.room && c.comb <= c.room); }

int alone(const PlainColony& c) { return c.lacksQueen ? 0 : plainValue(c.quarters); }

bool among(const std::vector<PlainPair>& pairs, int a, int b) {
    return std::find(pairs.begin(), pairs.end(), PlainPair{a, b}) != pairs.end();
}

struct UnionSearch {
    const PlainYard& yard;
    const std::vector<PlainPair>& forbidden;

    /// Over the colonies from `first` on that are not used, with `left` unions to go.
    long best(size_t first, std::vector<char>& used, int left) const {
        while (first < used.size() && used[first]) ++first;
        if (first >= used.size() || left == 0) return 0;
        used[first] = 1;
        long sum = best(first + 1, used, left);
        for (size_t other = first + 1; other < used.size(); ++other) {
            const int a = static_cast<int>(first);
            const int b = static_cast<int>(other);
            if (used[other] || among(forbidden, a, b) || !plainMayUnite(yard, a, b)) continue;
            used[other] = 1;
            sum = std::max(sum, plainGain(yard, a, b) + best(first + 1, used, left - 1));
            used[other] = 0;
        }
        used[first] = 0;
        return sum;
    }
};

} // namespace

int plainValue(int quarters) {
    const int p = at(kAlive, quarters);
    return (p * (1000 + at(kDivided, quarters)) + 500) / 1000;
}

int plainCarry(const PlainColony& a, const PlainColony& b) {
    const long squared = long(a.x - b.x) * (a.x - b.x) + long(a.y - b.y) * (a.y - b.y);
    int c = 0;
    while (long(2 * c + 1) * (2 * c + 1) <= 4 * squared) ++c; // half up
    return c;
}

int plainGain(const PlainYard& yard, int a, int b) {
    const PlainColony& one = yard.colonies[static_cast<size_t>(a)];
    const PlainColony& other = yard.colonies[static_cast<size_t>(b)];
    return plainValue(one.quarters + other.quarters) - alone(one) - alone(other) - plainCarry(one, other);
}

bool plainMayUnite(const PlainYard& yard, int a, int b, bool lessPart10) {
    const PlainColony& one = yard.colonies[static_cast<size_t>(a)];
    const PlainColony& other = yard.colonies[static_cast<size_t>(b)];
    for (const PlainColony* c : {&one, &other})
        if (c->held || c->layingWorkers || c->quarters <= 8 || !oneBox(*c)) return false;
    if (one.lacksQueen && other.lacksQueen) return false;
    if (one.boxKind != other.boxKind || one.quarters + other.quarters > 2 * one.room) return false;
    const bool strength = yard.forStrength && (weak(one) || medium(one)) && (weak(other) || medium(other)) &&
                          (weak(one) || weak(other)) && !one.virgin && !other.virgin;
    const bool queen = yard.forQueens && one.lacksQueen != other.lacksQueen && !(one.lacksQueen ? other : one).virgin;
    if (!strength && !queen) return false;
    return lessPart10 || plainGain(yard, a, b) >= (queen ? 1 : 50);
}

long bestGain(const PlainYard& yard, const std::vector<PlainPair>& pins, const std::vector<PlainPair>& forbidden,
              int most) {
    std::vector<char> used(yard.colonies.size(), 0);
    long sum = 0;
    for (const auto& [a, b] : pins) {
        used[static_cast<size_t>(a)] = used[static_cast<size_t>(b)] = 1;
        sum += plainGain(yard, a, b);
    }
    return sum + UnionSearch{yard, forbidden}.best(0, used, most - static_cast<int>(pins.size()));
}

bool plainShakesOut(const PlainYard& yard, int colony) {
    const PlainColony& c = yard.colonies[static_cast<size_t>(colony)];
    return yard.forStrength && shakeOutClass(c) && !c.held && !c.layingWorkers;
}

long plainShakeOutValue(const PlainYard& yard, const std::vector<PlainUnion>& unions, int colony, int into) {
    const PlainColony& guest = yard.colonies[static_cast<size_t>(colony)];
    const PlainColony& host = yard.colonies[static_cast<size_t>(into)];
    int strength = host.quarters;
    long disturbed = 0;
    for (const PlainUnion& u : unions)
        if (u.host == into) {
            strength += yard.colonies[static_cast<size_t>(u.moved)].quarters;
            disturbed = 200;
        }
    return plainValue(strength + guest.quarters) - plainValue(strength) - plainCarry(guest, host) - disturbed;
}

BestShakeOuts bestShakeOuts(const PlainYard& yard, const std::vector<PlainUnion>& unions, int perHost) {
    const auto inUnion = [&](int c, bool asHost) {
        return std::any_of(unions.begin(), unions.end(),
                           [&](const PlainUnion& u) { return c == (asHost ? u.host : u.moved); });
    };
    std::vector<int> hosts;
    std::map<std::vector<int>, BestShakeOuts> best{{{}, {}}}; // by the room left at each host
    for (int c = 0; c < static_cast<int>(yard.colonies.size()); ++c) {
        const PlainColony& colony = yard.colonies[static_cast<size_t>(c)];
        const bool alone = !inUnion(c, true) && !inUnion(c, false) && !colony.held && !colony.layingWorkers &&
                           !colony.lacksQueen && colony.quarters > 8;
        if (inUnion(c, true) || alone) hosts.push_back(c);
    }
    best = {{std::vector<int>(hosts.size(), perHost), {}}};
    for (int c = 0; c < static_cast<int>(yard.colonies.size()); ++c) {
        if (!plainShakesOut(yard, c)) continue;
        auto next = best; // this one stays
        for (const auto& [room, so] : best)
            for (size_t h = 0; h < hosts.size(); ++h) {
                if (room[h] == 0) continue;
                std::vector<int> less = room;
                --less[h];
                const BestShakeOuts with{so.count + 1, so.value + plainShakeOutValue(yard, unions, c, hosts[h])};
                const auto [known, fresh] = next.try_emplace(less, with);
                if (!fresh && std::pair(known->second.count, known->second.value) < std::pair(with.count, with.value))
                    known->second = with;
            }
        best = std::move(next);
    }
    BestShakeOuts out{-1, 0};
    for (const auto& [room, so] : best)
        if (std::pair(out.count, out.value) < std::pair(so.count, so.value)) out = so;
    return out;
}

} // namespace tests::rules
