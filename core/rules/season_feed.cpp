#include "core/rules/season_feed.h"

#include "core/rules/calc/syrup.h"
#include "core/rules/season.h"

#include <algorithm>
#include <map>
#include <set>

namespace core::rules {

namespace {

class Sum {
public:
    void add(const Feeding& f) {
        const auto kind = static_cast<size_t>(f.what);
        ++m_given.feedings;
        m_colonies.insert(f.colony);
        if (f.volume) m_given.millilitres[kind] += f.volume->value;
        if (f.weight) m_given.decagrams[kind] += f.weight->value;
        if (const auto sugar = sugarIn(f))
            m_given.sugarKg += *sugar;
        else if (f.what == FeedKind::Syrup || f.what == FeedKind::Sugar)
            ++m_given.sugarUnknown;
    }
    FeedGiven given() const {
        FeedGiven out = m_given;
        out.colonies = static_cast<int>(m_colonies.size());
        return out;
    }

private:
    FeedGiven m_given;
    std::set<ColonyId> m_colonies;
};

/// Those of the period and yard.
template <class Take> void each(const SeasonBook& book, Take&& take) {
    const ColonyPlaces places(book.s);
    for (const Feeding& f : book.feedings) {
        if (f.day < book.from || f.day > book.s.on) continue;
        const auto c = places.find(f.colony);
        const auto yard = c ? places.yardOn(*c, f.day) : std::nullopt;
        if (yard && (!book.yard || yard == book.yard)) take(f);
    }
}

} // namespace

std::optional<double> sugarIn(const Feeding& f) {
    if (f.what == FeedKind::Sugar && f.weight) return f.weight->kilograms();
    const auto mix = f.what == FeedKind::Syrup ? calc::mixOf(f.mix) : std::nullopt;
    if (!mix) return std::nullopt;
    const calc::Syrup syrup = calc::syrupOf(*mix);
    if (f.weight) return f.weight->kilograms() * syrup.sugarPercent / 100;
    if (!f.volume || !syrup.sugarKgPerL) return std::nullopt;
    return f.volume->litres() * *syrup.sugarKgPerL;
}

std::vector<FeedWeek> feedByWeek(const SeasonBook& book) {
    const auto weeks = weeksBetween(book.from, book.s.on);
    std::map<size_t, Sum> sums;
    each(book, [&](const Feeding& f) { sums[weekOf(weeks, f.day)].add(f); });
    std::vector<FeedWeek> out;
    for (const auto& [week, sum] : sums) out.push_back({weeks[week], sum.given()});
    return out;
}

FeedGiven feedGiven(const SeasonBook& book) {
    Sum sum;
    each(book, [&](const Feeding& f) { sum.add(f); });
    return sum.given();
}

FeedNeeds feedNeeds(const Snapshot& s, std::span<const ColonyFacts> facts, const Plan& plan,
                    std::optional<YardIx> yard) {
    FeedNeeds out;
    const auto wanted = [&](YardIx of) { return !yard || *yard == of; };
    for (size_t i = 0; i < s.yards.size(); ++i)
        if (wanted({static_cast<qint32>(i)}))
            out.asked = out.asked || inSeason(s.on, s.settings.fallStart, s.settings.fallEnd, s.yards[i].southern());
    for (const ColonyFacts& f : facts) {
        if (!wanted(f.yard)) continue;
        ++out.living;
        if (f.gross) ++out.weighed;
    }
    for (const Feed& feed : plan.feed) {
        const ColonyFacts& f = facts[static_cast<size_t>(feed.colony.value)];
        if (!wanted(f.yard)) continue;
        const bool united = std::ranges::find(plan.unions, feed.colony, &Union::host) != plan.unions.end();
        out.needs.push_back({&feed, f.yard, united ? std::nullopt : f.weighed});
        out.shortMillionthsKg += feed.shortMillionthsKg;
        out.halfLitres += feed.halfLitres;
    }
    return out;
}

} // namespace core::rules
