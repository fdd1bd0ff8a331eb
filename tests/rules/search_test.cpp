#include "core/base/error.h"
#include "core/rules/given_up.h"
#include "core/rules/plan.h"
#include "tests/rules/all_ways.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

#include <QStringList>

#include <algorithm>
#include <array>
#include <map>
#include <random>
#include <set>

// The plan of small random yards against every way there is (rules 4.7 and 4.9), over the whole range of each input.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

class RandomYard {
public:
    RandomYard(unsigned seed, int colonies) : m_random(seed) {
        plain.forStrength = !chance(8);
        plain.forQueens = plain.forStrength || chance(2);
        day = plain.forStrength ? "2026-09-15" : plain.forQueens ? "2026-06-20" : "2026-11-10";
        counted = plain.forStrength ? "2026-09-14" : plain.forQueens ? "2026-06-19" : "2026-11-09";
        m_near = chance(2);
        for (int i = 0; i < colonies; ++i) addColony(i);
    }

    static QString label(int i) { return "C" + QString::number(i); }

    PlainYard plain;
    PlanBook book;
    QString day, counted;

private:
    int pick(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }
    bool chance(int oneIn) { return pick(1, oneIn) == 1; }

    void addColony(int i) {
        static const std::map<QString, int> kRooms{{"langstroth-10", 40}, {"langstroth-8", 32}, {"dadant-12", 48}};
        PlainColony c;
        c.boxKind = chance(5) ? pick(1, 2) : 0;
        const QString kind =
            std::array<const char*, 3>{"langstroth-10", "langstroth-8", "dadant-12"}[static_cast<size_t>(c.boxKind)];
        c.room = kRooms.at(kind);
        c.boxes = chance(4) ? 2 : 1;
        const int range = m_near ? 40 : 900;
        c.x = pick(-range, range);
        c.y = pick(-range, range);
        c.held = chance(8);
        const Cells cells{{"x_m", QString::number(c.x)},
                          {"y_m", QString::number(c.y)},
                          {"box", kind},
                          {"brood_boxes", QString::number(c.boxes)}};
        c.held ? book.unchecked(label(i), cells) : book.colony(label(i), cells);
        if (!c.held) book.visit(label(i), "2026-06-01", {{"brood_frames", "4"}, {"brood_checked", "4"}});
        book.visit(label(i), counted, count(c));
        plain.colonies.push_back(c);
    }

    Cells count(PlainColony& c) {
        Cells cells;
        const int lower = std::min(c.room, chance(5) ? pick(0, c.room) : pick(0, 26));
        const int upper = c.boxes == 2 ? std::min(c.room, pick(0, 24)) : 0;
        c.quarters = lower + upper;
        cells["bees_top"] = framesText({lower});
        if (c.boxes == 2) cells["upper_bees_bottom"] = framesText({upper});
        addComb(c, cells);
        static constexpr const char* kQueens[] = {"eggs",        "seen",   "unknown",       "none",
                                                  "drone-layer", "virgin", "laying-workers"};
        const int queen = chance(2) ? 0 : pick(0, 6);
        cells["queen"] = kQueens[queen];
        c.lacksQueen = queen == 3 || queen == 4;
        c.virgin = queen == 5;
        c.layingWorkers = queen == 6;
        return cells;
    }

    void addComb(PlainColony& c, Cells& cells) {
        const int brood = pick(0, 8);
        const int lower = pick(0, 16);
        const int upper = pick(0, 16);
        if (chance(2)) return;
        cells["brood_frames"] = QString::number(brood);
        cells["stores_frames"] = framesText({lower});
        if (c.boxes == 1) return;
        cells["upper_stores_frames"] = framesText({upper});
        c.comb = 4 * brood + lower + upper;
    }

    std::mt19937 m_random;
    bool m_near = true;
};

int indexOf(const Snapshot& s, ColonyIx c) { return s.colony(c).label.mid(1).toInt(); }

long gainOf(const Plan& plan) {
    long sum = 0;
    for (const Union& u : plan.unions) sum += u.gain;
    return sum;
}

std::vector<PlainUnion> plainUnions(const Snapshot& s, const Plan& plan) {
    std::vector<PlainUnion> out;
    for (const Union& u : plan.unions) out.push_back({indexOf(s, u.moved), indexOf(s, u.host)});
    return out;
}

/// Each union is allowed and gains what it says; nobody is in two.
void expectUnionsAllowed(const RandomYard& yard, const Snapshot& s, const Plan& plan) {
    std::set<int> used;
    for (const Union& u : plan.unions) {
        const auto [a, b] = std::minmax({indexOf(s, u.moved), indexOf(s, u.host)});
        EXPECT_TRUE(used.insert(a).second && used.insert(b).second);
        EXPECT_TRUE(plainMayUnite(yard.plain, a, b, u.pinned)) << a << " and " << b;
        EXPECT_EQ(plainGain(yard.plain, a, b), u.gain);
    }
}

void expectShakeOutsBest(const RandomYard& yard, const Snapshot& s, const Plan& plan, int perHost) {
    const auto unions = plainUnions(s, plan);
    long value = 0;
    std::map<int, int> taken;
    for (const ShakeOut& shaken : plan.shakeOuts) {
        EXPECT_TRUE(plainShakesOut(yard.plain, indexOf(s, shaken.colony)));
        EXPECT_LE(++taken[indexOf(s, shaken.into)], perHost);
        value += plainShakeOutValue(yard.plain, unions, indexOf(s, shaken.colony), indexOf(s, shaken.into));
    }
    const BestShakeOuts best = bestShakeOuts(yard.plain, unions, perHost);
    EXPECT_EQ(static_cast<int>(plan.shakeOuts.size()), best.count);
    EXPECT_EQ(value, best.value);
}

/// Every living colony is in exactly one list.
void expectPartition(const Snapshot& s, const Plan& plan) {
    std::multiset<ColonyIx> lists;
    std::set<ColonyIx> held;
    for (const Hold& h : plan.holds) held.insert(h.colony);
    lists.insert(held.begin(), held.end());
    for (const Union& u : plan.unions) lists.insert({u.moved, u.host});
    for (const ShakeOut& shaken : plan.shakeOuts) lists.insert(shaken.colony);
    for (const Separate& apart : plan.separate) lists.insert(apart.colony);
    for (const Alone& a : plan.alone) lists.insert(a.colony);
    for (const UnresolvedColony& u : plan.unresolved) lists.insert(u.colony);
    EXPECT_EQ(lists.size(), s.livingCount());
    for (const ColonyIx c : lists) EXPECT_EQ(lists.count(c), 1U) << s.colony(c).label.toStdString();
}

// Source: own calculation, every set of unions and every way to shake out tried.
TEST(Search, TheUnionsAndShakeOutsAreTheBestThereAre) {
    int unions = 0;
    int shakeOuts = 0;
    for (unsigned seed = 1; seed <= 400; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        RandomYard yard(seed, 3 + static_cast<int>(seed % 9));
        const int perHost = 1 + static_cast<int>(seed % 3 == 0);
        yard.book.set("shake.per_host", QString::number(perHost));
        const Snapshot s = yard.book.on(yard.day);
        const Plan plan = advise(s, {});
        expectUnionsAllowed(yard, s, plan);
        EXPECT_EQ(gainOf(plan), bestGain(yard.plain, {}, {}, 99));
        EXPECT_EQ(plan.totals.gain, gainOf(plan));
        expectShakeOutsBest(yard, s, plan, perHost);
        expectPartition(s, plan);
        unions += plan.totals.unions;
        shakeOuts += plan.totals.shakeOuts;
    }
    EXPECT_GT(unions, 200);
    EXPECT_GT(shakeOuts, 200);
}

/// Pins and forbidden pairs that fit together, from the pairs that may be pinned.
PlanRequest someRequest(const RandomYard& yard, const Snapshot& s, std::mt19937& random, std::vector<PlainPair>& pins,
                        std::vector<PlainPair>& forbidden) {
    PlanRequest request;
    const auto count = static_cast<int>(yard.plain.colonies.size());
    const auto ix = [&](int c) { return named(s, RandomYard::label(c)); };
    std::set<int> used;
    for (int a = 0; a < count; ++a)
        for (int b = a + 1; b < count; ++b) {
            if (!plainMayUnite(yard.plain, a, b, true)) continue;
            if (random() % 6 == 0 && !used.contains(a) && !used.contains(b) && pins.size() < 2) {
                pins.push_back({a, b});
                used.insert({a, b});
                request.pins.push_back({ix(b), ix(a)});
            } else if (random() % 4 == 0) {
                forbidden.push_back({a, b});
                request.forbids.push_back({ix(random() % 2 ? a : b), ix(random() % 2 ? a : b)});
                request.forbids.back() = {ix(a), ix(b)};
                if (random() % 2) std::swap(request.forbids.back().first, request.forbids.back().second);
            }
        }
    return request;
}

TEST(Search, PinsForbiddenPairsAndALimitAreKeptAndTheRestIsTheBest) {
    int pinned = 0;
    for (unsigned seed = 1; seed <= 300; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const RandomYard yard(seed + 5000, 4 + static_cast<int>(seed % 8));
        const Snapshot s = yard.book.on(yard.day);
        std::mt19937 random(seed);
        std::vector<PlainPair> pins, forbidden;
        PlanRequest request = someRequest(yard, s, random, pins, forbidden);
        const int most = static_cast<int>(pins.size() + random() % 4);
        if (random() % 3) request.most = most;
        const Plan plan = advise(s, request);
        expectUnionsAllowed(yard, s, plan);
        expectPartition(s, plan);
        EXPECT_EQ(gainOf(plan), bestGain(yard.plain, pins, forbidden, request.most.value_or(99)));
        if (request.most) {
            EXPECT_LE(plan.totals.unions, most);
        }
        EXPECT_EQ(std::count_if(plan.unions.begin(), plan.unions.end(), [](const Union& u) { return u.pinned; }),
                  static_cast<std::ptrdiff_t>(pins.size()));
        pinned += static_cast<int>(pins.size());
    }
    EXPECT_GT(pinned, 50);
}

// With one limit over several yards the greatest sum of all counts, not each yard's own.
TEST(Search, ALimitIsSharedByAllYards) {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        std::mt19937 random(seed);
        PlanBook book;
        std::vector<long> gains; // of single pairs, far from each other
        for (int y = 0; y < 5; ++y) {
            const QString yard = "Y" + QString::number(y);
            book.yard(yard);
            const int a = 9 + static_cast<int>(random() % 11);
            const int b = 9 + static_cast<int>(random() % 11);
            for (const auto& [name, quarters] : {std::pair("a", a), std::pair("b", b)})
                book.colony(yard + name, {{"yard", yard}, {"x_m", *name == 'a' ? "0" : "3"}})
                    .bees(yard + name, framesText({quarters}));
            const long gain = plainValue(a + b) - plainValue(a) - plainValue(b) - 3;
            if (gain >= 50) gains.push_back(gain);
        }
        std::sort(gains.rbegin(), gains.rend());
        for (int most = 0; most <= 5; ++most) {
            PlanRequest request;
            request.most = most;
            long best = 0;
            for (size_t i = 0; i < gains.size() && i < static_cast<size_t>(most); ++i) best += gains[i];
            EXPECT_EQ(gainOf(book.plan(kFall, request)), best) << "at most " << most;
        }
    }
}

// Source: own calculation, every set of unions with each pair pinned tried.
void expectGivenUp(const PlainYard& yard, const Snapshot& s, const GivenUp& given, const std::vector<PlainPair>& pins,
                   const std::vector<PlainPair>& forbidden, int most) {
    const int own = indexOf(s, given.colony);
    const auto count = static_cast<int>(yard.colonies.size());
    std::set<int> pinned;
    for (const PlainPair& pin : pins) pinned.insert({pin.first, pin.second});
    long best = -1;
    long bestOfPartner = -1;
    for (int other = 0; other < count; ++other) {
        const PlainPair pair = std::minmax(own, other);
        if (other == own || pinned.contains(other) || !plainMayUnite(yard, pair.first, pair.second) ||
            std::count(forbidden.begin(), forbidden.end(), pair) || static_cast<int>(pins.size()) >= most)
            continue;
        auto with = pins;
        with.push_back(pair);
        const long sum = bestGain(yard, with, forbidden, most);
        best = std::max(best, sum);
        if (given.partner && other == indexOf(s, *given.partner)) bestOfPartner = sum;
    }
    ASSERT_EQ(given.partner.has_value(), best >= 0);
    if (!given.partner) {
        EXPECT_EQ(given.nearest.size(), static_cast<size_t>(std::min(3, count - 1)));
        return;
    }
    EXPECT_EQ(bestOfPartner, best);
    EXPECT_EQ(given.gain, plainGain(yard, own, indexOf(s, *given.partner)));
    EXPECT_EQ(given.lost, bestGain(yard, pins, forbidden, most) - (best - given.gain));
    EXPECT_GE(given.lost, given.gain);
}

TEST(Search, WhatWasGivenUpIsTheBestUnionWithThatColonyAndItsPrice) {
    int asked = 0;
    int possible = 0;
    for (unsigned seed = 1; seed <= 400; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const RandomYard yard(seed + 9000, 3 + static_cast<int>(seed % 8));
        const Snapshot s = yard.book.on(yard.day);
        std::mt19937 random(seed);
        std::vector<PlainPair> pins, forbidden;
        PlanRequest request;
        if (seed % 2) request = someRequest(yard, s, random, pins, forbidden);
        const int most = static_cast<int>(pins.size() + random() % 4);
        if (seed % 4 == 1) request.most = most;
        const Plan plan = advise(s, request);
        std::vector<ColonyIx> alone;
        for (const Alone& a : plan.alone)
            if (a.atRisk) alone.push_back(a.colony);
        const DayView view = viewOf(s);
        for (const GivenUp& given : givenUp(view, plan.yards, request, alone)) {
            expectGivenUp(yard.plain, s, given, pins, forbidden, request.most.value_or(99));
            ++asked;
            possible += given.partner.has_value();
        }
        if (seed % 2) continue;
        const auto after = givenUp(s, colonyFacts(s), plan, alone);
        const auto before = givenUp(view, plan.yards, request, alone);
        ASSERT_EQ(after.size(), before.size());
        for (size_t i = 0; i < after.size(); ++i) EXPECT_EQ(after[i].partner, before[i].partner);
    }
    EXPECT_GT(asked, 150);
    EXPECT_GT(possible, 10);
}

// An odd number of weak colonies, any two of which may unite: one stays alone, and has partners enough.
TEST(Search, WhatWasGivenUpAmongMany) {
    int possible = 0;
    for (unsigned seed = 1; seed <= 120; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        std::mt19937 random(seed);
        PlanBook book;
        PlainYard yard;
        for (int i = 0; i < 5 + 2 * static_cast<int>(seed % 3); ++i) {
            PlainColony c;
            c.quarters = 9 + static_cast<int>(random() % 11);
            c.x = static_cast<int>(random() % 60);
            c.y = static_cast<int>(random() % 60);
            const QString label = RandomYard::label(i);
            book.colony(label, {{"x_m", QString::number(c.x)}, {"y_m", QString::number(c.y)}});
            book.bees(label, framesText({c.quarters}));
            yard.colonies.push_back(c);
        }
        const Snapshot s = book.on(kFall);
        const Plan plan = advise(s, {});
        std::vector<ColonyIx> alone;
        for (const Alone& a : plan.alone) alone.push_back(a.colony);
        for (const GivenUp& given : givenUp(s, colonyFacts(s), plan, alone)) {
            expectGivenUp(yard, s, given, {}, {}, 99);
            possible += given.partner.has_value();
        }
    }
    EXPECT_GT(possible, 100);
}

// 3 frames and 4 gain 820·1.4 − 300 − 480 = 368 at 0 m, less the metres between them; A is 1 m from B, C 30 m on the
// other side. Source: own calculation.
TEST(GivenUp, SaysThePartnerTheGainAndThePrice) {
    PlanBook book;
    book.colony("A", {{"x_m", "0"}}).colony("B", {{"x_m", "1"}}).colony("C", {{"x_m", "31"}});
    book.bees("A", "3").bees("B", "4").bees("C", "3");
    const Snapshot s = book.on(kFall);
    const Plan plan = advise(s, {});
    ASSERT_EQ(unionsOf(s, plan), "A>B");
    const auto given = givenUp(s, colonyFacts(s), plan, {named(s, "C")});
    ASSERT_EQ(given.size(), 1U);
    EXPECT_EQ(given[0].partner, named(s, "B"));
    EXPECT_EQ(given[0].gain, 338);
    EXPECT_EQ(given[0].lost, 367);
    const std::string text = textOf(sentencesOf(s, given[0])).toStdString();
    for (const char* part : {"with B, gain 338", "gain 367 less", "29 thousandths", "assumption"})
        EXPECT_NE(text.find(part), std::string::npos) << part << " is not in: " << text;
}

TEST(GivenUp, NamesWhoStoodNearAndWhatBarredThem) {
    PlanBook book;
    book.colony("A", {{"x_m", "0"}}).colony("B", {{"x_m", "9"}, {"box", "dadant-12"}}).unchecked("C", {{"x_m", "2"}});
    book.bees("A", "3").bees("B", "4").bees("C", "3");
    const Snapshot s = book.on(kFall);
    const auto given = givenUp(s, colonyFacts(s), advise(s, {}), {named(s, "A")});
    ASSERT_EQ(given.size(), 1U);
    ASSERT_EQ(given[0].nearest.size(), 2U);
    EXPECT_EQ(given[0].nearest[0].colony, named(s, "C"));
    EXPECT_EQ(given[0].nearest[0].against.rule, "4.7.2");
    EXPECT_EQ(given[0].nearest[1].against.rule, "4.7.6");
    EXPECT_EQ(textOf(sentencesOf(s, given[0])),
              "No union was possible. Not with C: one of the two is held. Not with B: other boxes.");
}

} // namespace
