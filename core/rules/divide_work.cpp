#include "core/rules/divide_work.h"

#include "core/base/natural_order.h"
#include "core/rules/drift.h"

#include <algorithm>
#include <array>
#include <set>

namespace core::rules {

namespace {

constexpr qint64 kApartMm = 300; // two hives are never set nearer (core/edit/edits.h, kStandApartMm)
constexpr qint64 kStepMm = 1000; // bare ground: so far from every other stand, common practice, no source
constexpr int kRings = 40;       // of half a metre: to 20 m

/// Gives out the free places of one yard.
class Places {
public:
    Places(const Snapshot& s, const Plan& plan, YardIx yard, std::span<const Stand> stands) : m_s(s) {
        std::set<StandId> used;
        for (size_t i = 0; i < s.livingCount(); ++i) {
            const ColonyIx c{static_cast<qint32>(i)};
            const SnapStay* place = s.placeOf(c);
            if (!place || place->yard != yard) continue;
            used.insert(place->stand);
            m_hives.push_back(place->at);
        }
        for (const Hold& hold : plan.holds)
            if (const SnapStay* place = s.placeOf(hold.colony); place && place->yard == yard)
                m_held.push_back(place->at);
        for (const Stand& stand : stands) {
            m_taken.push_back(stand.at);
            if (!stand.removed && !used.contains(stand.id) && clear(m_hives, stand.at, kApartMm))
                m_free.push_back({stand.id, stand.name, stand.at, nearHeld(stand.at)});
        }
        m_taken.insert(m_taken.end(), m_hives.begin(), m_hives.end());
    }

    NewPlace next(MmPoint from) {
        if (m_free.empty()) return bare(from);
        const auto best = std::ranges::min_element(m_free, [&](const NewPlace& a, const NewPlace& b) {
            if (a.nearHeld != b.nearHeld) return b.nearHeld;
            const qint64 da = distanceTenths(a.at, from), db = distanceTenths(b.at, from);
            return da != db ? da < db : NaturalLess()(a.name, b.name);
        });
        NewPlace place = *best;
        m_free.erase(best);
        std::erase_if(m_free,
                      [&](const NewPlace& other) { return squaredDistance(other.at, place.at) < kApartMm * kApartMm; });
        return place;
    }

private:
    static bool clear(const std::vector<MmPoint>& others, MmPoint at, qint64 apart) {
        return std::ranges::none_of(others, [&](MmPoint other) { return squaredDistance(other, at) < apart * apart; });
    }
    bool nearHeld(MmPoint at) const {
        return std::ranges::any_of(m_held, [&](MmPoint held) { return withinDrift(m_s.settings, held, at); });
    }
    /// The first clear spot on rings of half a metre, near no held colony where there is one.
    NewPlace bare(MmPoint from) {
        std::optional<NewPlace> found;
        for (int ring = 2; ring <= kRings && !(found && !found->nearHeld); ++ring)
            for (const auto& [x, y] : kWays) {
                const MmPoint at{from.x + static_cast<qint32>(ring * 500 * x),
                                 from.y + static_cast<qint32>(ring * 500 * y)};
                if (!clear(m_taken, at, kStepMm)) continue;
                if (!found || (found->nearHeld && !nearHeld(at))) found = NewPlace{{}, {}, at, nearHeld(at)};
                if (!found->nearHeld) break;
            }
        if (!found) found = NewPlace{{}, {}, {from.x, from.y + kRings * 500}, false};
        m_taken.push_back(found->at);
        return *found;
    }

    static constexpr std::array<std::pair<double, double>, 8> kWays = {
        {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {0.75, 0.75}, {-0.75, 0.75}, {0.75, -0.75}, {-0.75, -0.75}}};

    const Snapshot& m_s;
    std::vector<MmPoint> m_hives, m_held, m_taken;
    std::vector<NewPlace> m_free;
};

} // namespace

std::vector<DivideWork> divideWork(const Snapshot& s, const Plan& plan, YardIx yard, std::span<const Stand> stands) {
    std::vector<DivideWork> all;
    Places places(s, plan, yard, stands);
    for (const Divide& divide : plan.divides) {
        const SnapStay* mother = s.placeOf(divide.colony);
        if (!mother || mother->yard != yard) continue;
        DivideWork work{divide, {}};
        for (int made = 1; made < divide.parts; ++made) work.places.push_back(places.next(mother->at));
        all.push_back(std::move(work));
    }
    return all;
}

Sentences divideDriftWords() {
    return {{"Bees that have flown before go back to the old stand: give each new hive the bees of a brood frame more, "
             "shaken in, and close its entrance down to a bee's width (common practice, no source)."}};
}

Sentences divideSteps(DivideQueens queens) {
    Sentences steps = {
        {"Check the brood of the mother colony for disease first: with any doubt, stop and close it."},
        {"Find the queen. She stays in the old hive, on the old stand."},
        {"Put brood in all stages, combs of stores and bees from at least three combs into each new hive."}};
    switch (queens) {
    case DivideQueens::Cells:
        steps.push_back({"Each new hive gets a sealed queen cell between two brood combs, its tip down and free."});
        break;
    case DivideQueens::Bought:
        steps.push_back({"Each new hive gets its bought queen in her cage, a day later, once it feels queenless."});
        break;
    case DivideQueens::Own:
        steps.push_back({"Each new hive needs eggs and larvae of a day or two, to raise a queen from."});
        break;
    }
    steps.push_back({"Set it on its stand, entrance small, lid on, and write its label on it."});
    return steps;
}

} // namespace core::rules
