#include "core/rules/hold_treated.h"

#include <algorithm>
#include <queue>
#include <tuple>
#include <unordered_map>

namespace core::rules {

namespace {

using Rows = std::vector<std::pair<qint32, Day>>;

Rows ownTreatments(const Snapshot& s, const Standing& standing) {
    Rows rows;
    for (const SnapTreatment& t : s.treatments) {
        if (!t.antibiotic) continue;
        if (t.colony.value >= 0) {
            rows.emplace_back(t.colony.value, t.day);
            continue;
        }
        for (const YardStay& stay : standing.in(t.yard))
            if (stay.since <= t.day && t.day <= stay.until) rows.emplace_back(stay.colony.value, t.day);
    }
    std::sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
    return rows;
}

} // namespace

Treated::Treated(const Snapshot& s, const Gifts& gifts, const Standing& standing)
    : m_gifts(gifts), m_on(s.on), m_colonies(s.colonies.size()) {
    const Rows own = ownTreatments(s, standing);
    m_own = DaysBy(m_colonies, own);
    spread(own);
}

// Day by day; within a day the latest treatment first, so that each colony passes on once, what it has at last.
void Treated::spread(const Rows& own) {
    if (own.empty()) return;
    std::vector<Day> latest(m_colonies, Day{0});
    std::priority_queue<std::pair<Day, qint32>> today;
    const auto raise = [&](qint32 colony, Day known, Day treated) {
        Day& now = latest[static_cast<size_t>(colony)];
        if (treated <= now) return;
        now = treated;
        m_steps.push_back({colony, known, treated});
        today.emplace(treated, colony);
    };
    const auto all = m_gifts.all();
    size_t treatment = 0;
    size_t gift = 0;
    while (gift < all.size() || treatment < own.size()) {
        const Day day =
            std::min(gift < all.size() ? all[gift].day : m_on, treatment < own.size() ? own[treatment].second : m_on);
        for (; treatment < own.size() && own[treatment].second == day; ++treatment)
            raise(own[treatment].first, day, day);
        for (; gift < all.size() && all[gift].day == day; ++gift) {
            const qint32 giver = all[gift].from.value;
            if (latest[static_cast<size_t>(giver)].number > 0) today.emplace(latest[static_cast<size_t>(giver)], giver);
        }
        for (; !today.empty();) {
            const auto [treated, giver] = today.top();
            today.pop();
            if (treated < latest[static_cast<size_t>(giver)]) continue;
            const auto given = m_gifts.from(ColonyIx{giver});
            const auto first =
                std::lower_bound(given.begin(), given.end(), day, [](const Gift& g, Day d) { return g.day < d; });
            for (auto g = first; g != given.end() && g->day == day; ++g)
                if (g->beesOrComb()) raise(g->to.value, day, treated);
        }
    }
    std::stable_sort(m_steps.begin(), m_steps.end(), [](const Step& a, const Step& b) {
        return std::tie(a.colony, a.known, a.treated) < std::tie(b.colony, b.known, b.treated);
    });
}

std::optional<Day> Treated::latestKnown(ColonyIx colony, Day day) const {
    const auto after =
        std::upper_bound(m_steps.begin(), m_steps.end(), std::pair(colony.value, day),
                         [](const auto& key, const Step& step) { return key < std::pair(step.colony, step.known); });
    if (after == m_steps.begin() || (after - 1)->colony != colony.value) return std::nullopt;
    return (after - 1)->treated;
}

bool Treated::within(ColonyIx colony, Day day, int days) const {
    const auto latest = latestKnown(colony, day);
    return latest && day - *latest <= days;
}

// Backwards along gifts: for each colony the latest day on which what it gave came to `colony` in the end.
bool Treated::everWithin(ColonyIx colony, Day first, Day last, Day known) const {
    std::unordered_map<qint32, Day> limit{{colony.value, known}};
    std::priority_queue<std::pair<Day, qint32>> work;
    work.emplace(known, colony.value);
    while (!work.empty()) {
        const auto [until, at] = work.top();
        work.pop();
        if (until < limit.at(at)) continue;
        if (anyWithin(m_own.of(at), first, std::min(last, until))) return true;
        for (const Gift& g : m_gifts.to(ColonyIx{at})) {
            if (g.day > until) break;
            if (g.day < first || !g.beesOrComb()) continue;
            const auto [there, fresh] = limit.try_emplace(g.from.value, g.day);
            if (!fresh && there->second >= g.day) continue;
            there->second = g.day;
            work.emplace(g.day, g.from.value);
        }
    }
    return false;
}

} // namespace core::rules
