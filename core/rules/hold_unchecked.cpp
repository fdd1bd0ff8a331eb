#include "core/rules/hold_unchecked.h"

#include "core/rules/limits.h"
#include "core/rules/season.h"

#include <algorithm>

namespace core::rules {

namespace {

constexpr MonthDay kCheckSeason = fixed::kCheckSeason;

class UncheckedTrace {
public:
    explicit UncheckedTrace(const Evidence& evidence)
        : e(evidence),
          m_lastGift(e.s.colonies.size(), nullptr),
          m_spreadOn(e.s.colonies.size()),
          m_asked(e.gifts.all().size()) {}

    // Judges, in the order of days, the gifts that anything rests on.
    void run() {
        for (size_t i = 0; i < e.s.livingCount(); ++i) ask(ColonyIx{static_cast<qint32>(i)}, e.s.on);
        for (size_t i = 0; i < m_work.size(); ++i) ask(m_work[i]->from, m_work[i]->day);
        std::sort(m_work.begin(), m_work.end(), [](const Gift* a, const Gift* b) { return a->day < b->day; });
        for (size_t first = 0; first < m_work.size();) {
            size_t end = first;
            while (end < m_work.size() && m_work[end]->day == m_work[first]->day) ++end;
            spreadDay(std::span(m_work).subspan(first, end - first));
            first = end;
        }
    }

    // What limits its checks on that day; nothing where one counts.
    std::optional<UncheckedFact> unchecked(ColonyIx colony, Day day) const {
        UncheckedFact fact = ownLimits(colony, day);
        if (const Gift* gift = m_lastGift[static_cast<size_t>(colony.value)]) {
            fact.gift = *gift;
            fact.from = std::max(fact.from, gift->day + 1);
        }
        if (lastAnswer(colony, fact.from, day)) return std::nullopt;
        return fact;
    }

private:
    UncheckedFact ownLimits(ColonyIx colony, Day day) const {
        UncheckedFact fact;
        fact.colony = colony;
        fact.maxAge = day - e.limits.checkMaxAgeDays;
        fact.seasonStart = seasonStart(colony, day);
        fact.season = std::min(fact.seasonStart, day - e.limits.checkGraceDays);
        fact.spoiled = latestUpTo(e.findings.spoilers.of(colony.value), day);
        fact.from = std::max(fact.maxAge, fact.season);
        if (fact.spoiled) fact.from = std::max(fact.from, *fact.spoiled + 1);
        return fact;
    }

    // The latest clean check or negative from `first` to `last`.
    std::optional<Day> lastAnswer(ColonyIx colony, Day first, Day last) const {
        const SnapCheck* check = e.checks.latestClean(colony, first, last);
        const auto negative = latestUpTo(e.findings.negatives.of(colony.value), last);
        return later(check ? std::optional(check->day) : std::nullopt,
                     negative && *negative >= first ? negative : std::nullopt);
    }

    // Whether the colony is unchecked on that day rests on what it received since its last answer up to that day.
    void ask(ColonyIx colony, Day day) {
        const UncheckedFact limits = ownLimits(colony, day);
        const Day since = lastAnswer(colony, limits.from, day).value_or(limits.from);
        const auto received = e.gifts.to(colony);
        auto gift =
            std::lower_bound(received.begin(), received.end(), since, [](const Gift& g, Day d) { return g.day < d; });
        for (; gift != received.end() && gift->day <= day; ++gift) {
            auto asked = m_asked[e.gifts.positionTo(*gift)];
            if (asked || !gift->beesOrComb()) continue;
            asked = true;
            m_work.push_back(&*gift);
        }
    }

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
    void spreadDay(std::span<const Gift* const> gifts) {
        const Day day = gifts.front()->day;
        std::vector<ColonyIx> work;
        for (const Gift* gift : gifts) {
            if (isSpread(gift->from, day) || !unchecked(gift->from, day)) continue;
            markSpread(gift->from, day);
            work.push_back(gift->from);
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
    std::vector<bool> m_asked; // of each gift, in the order of receivers
    std::vector<const Gift*> m_work;
};

} // namespace

void traceUnchecked(const Evidence& e, std::vector<UncheckedFact>& facts) {
    UncheckedTrace trace(e);
    trace.run();
    for (size_t i = 0; i < e.s.livingCount(); ++i)
        if (auto fact = trace.unchecked(ColonyIx{static_cast<qint32>(i)}, e.s.on)) facts.push_back(*fact);
}

} // namespace core::rules
