#include "core/rules/hold_unchecked.h"

#include "core/rules/season.h"

#include <algorithm>

namespace core::rules {

namespace {

constexpr MonthDay kCheckSeason{5, 1}; // rule 4.4.10; no setting

class UncheckedTrace {
public:
    explicit UncheckedTrace(const Evidence& evidence)
        : e(evidence), m_lastGift(e.s.colonies.size(), nullptr), m_spreadOn(e.s.colonies.size()) {}

    void run() {
        const auto all = e.gifts.all();
        for (size_t first = 0; first < all.size();) {
            size_t end = first;
            while (end < all.size() && all[end].day == all[first].day) ++end;
            spreadDay(all.subspan(first, end - first));
            first = end;
        }
    }

    // What limits its checks on that day; nothing where one counts.
    std::optional<UncheckedFact> unchecked(ColonyIx colony, Day day) const {
        UncheckedFact fact;
        fact.colony = colony;
        fact.maxAge = day - e.limits.checkMaxAgeDays;
        fact.seasonStart = seasonStart(colony, day);
        fact.season = std::min(fact.seasonStart, day - e.limits.checkGraceDays);
        fact.spoiled = latestUpTo(e.findings.spoilers.of(colony.value), day);
        fact.from = std::max(fact.maxAge, fact.season);
        if (fact.spoiled) fact.from = std::max(fact.from, *fact.spoiled + 1);
        if (const Gift* gift = m_lastGift[static_cast<size_t>(colony.value)]) {
            fact.gift = *gift;
            fact.from = std::max(fact.from, gift->day + 1);
        }
        if (e.checks.latestClean(colony, fact.from, day) ||
            anyWithin(e.findings.negatives.of(colony.value), fact.from, day))
            return std::nullopt;
        return fact;
    }

private:
    // Of the yard where it stood that day; in two yards, the later.
    Day seasonStart(ColonyIx colony, Day day) const {
        const auto stays = e.standing.of(colony);
        std::optional<Day> start;
        for (auto stay = stays.rbegin(); stay != stays.rend(); ++stay) {
            if (stay->since > day) continue;
            if (start && stay->until < day) break;
            start = later(start, latestStart(day, kCheckSeason, e.s.yard(stay->yard).southern()));
        }
        return start.value_or(latestStart(day, kCheckSeason, false));
    }

    // From the givers that are unchecked by themselves; a circle of gifts alone makes nobody so.
    void spreadDay(std::span<const Gift> gifts) {
        const Day day = gifts.front().day;
        std::vector<ColonyIx> work;
        for (const Gift& gift : gifts) {
            if (!gift.beesOrComb() || isSpread(gift.from, day) || !unchecked(gift.from, day)) continue;
            markSpread(gift.from, day);
            work.push_back(gift.from);
        }
        for (size_t i = 0; i < work.size(); ++i) {
            const auto given = e.gifts.from(work[i]);
            auto gift =
                std::lower_bound(given.begin(), given.end(), day, [](const Gift& g, Day d) { return g.day < d; });
            for (; gift != given.end() && gift->day == day; ++gift) {
                if (!gift->beesOrComb()) continue;
                m_lastGift[static_cast<size_t>(gift->to.value)] = &*gift;
                if (isSpread(gift->to, day)) continue;
                markSpread(gift->to, day);
                work.push_back(gift->to);
            }
        }
    }

    bool isSpread(ColonyIx colony, Day day) const { return m_spreadOn[static_cast<size_t>(colony.value)] == day; }
    void markSpread(ColonyIx colony, Day day) { m_spreadOn[static_cast<size_t>(colony.value)] = day; }

    const Evidence& e;
    std::vector<const Gift*> m_lastGift; // the latest from an unchecked colony
    std::vector<Day> m_spreadOn;
};

} // namespace

void traceUnchecked(const Evidence& e, std::vector<UncheckedFact>& facts) {
    UncheckedTrace trace(e);
    trace.run();
    for (size_t i = 0; i < e.s.livingCount(); ++i)
        if (auto fact = trace.unchecked(ColonyIx{static_cast<qint32>(i)}, e.s.on)) facts.push_back(*fact);
}

} // namespace core::rules
