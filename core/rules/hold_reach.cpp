#include "core/rules/hold_reach.h"

#include <algorithm>

namespace core::rules {

ReachTrace::ReachTrace(const Evidence& evidence, Spread& spread)
    : e(evidence), m_spread(spread), m_lastReceived(e.s.colonies.size(), -1) {}

void ReachTrace::trace(const std::vector<Source>& sources, qint32 index, std::vector<ReachFact>& facts) {
    m_source = &sources[static_cast<size_t>(index)];
    m_from = m_source->date - e.limits.afbYardBackDays;
    findStays();
    m_spread.touch(m_source->colony, m_from);
    for (const ReachStay& stay : m_stays) m_spread.touch(stay.colony, stay.first);
    m_spread.run([this](ColonyIx giver, Day day) { return passes(giver, day); },
                 [this](const Gift& gift) { return receives(gift); });
    collect(index, facts);
    for (const ColonyIx colony : m_receivers) m_lastReceived[position(colony)] = -1;
    m_receivers.clear();
    m_received.clear();
    m_stays.clear();
}

std::vector<ReachTrace::SourceYard> ReachTrace::sourceYards() const {
    std::vector<SourceYard> yards;
    const auto note = [&](YardIx yard, Day last) {
        const auto known =
            std::find_if(yards.begin(), yards.end(), [&](const SourceYard& y) { return y.yard == yard; });
        if (known == yards.end())
            yards.push_back({yard, last});
        else
            known->last = std::max(known->last, last);
    };
    Day stood; // the last day on which it stood anywhere
    for (const YardStay& stay : e.standing.of(m_source->colony))
        if (stay.since <= m_source->last) stood = std::max(stood, std::min(stay.until, m_source->last));
    for (const YardStay& stay : e.standing.of(m_source->colony)) {
        if (stay.since > m_source->last) break;
        if (stay.until >= stood)
            note(stay.yard, m_source->last); // of two, where it was carried that day
        else if (stay.until >= m_from)
            note(stay.yard, stay.until);
    }
    return yards;
}

void ReachTrace::findStays() {
    for (const SourceYard& y : sourceYards()) {
        const Day end = y.last + e.limits.afbYardAfterDays;
        for (const YardStay& stay : e.standing.in(y.yard)) {
            if (stay.colony == m_source->colony || stay.until < m_from || stay.since > end) continue;
            m_stays.push_back({stay.colony, y.yard, stay.since, stay.until, y.last, std::max(stay.since, m_from)});
        }
    }
    std::sort(m_stays.begin(), m_stays.end(), [](const ReachStay& a, const ReachStay& b) {
        return std::pair(a.colony, a.arrived) < std::pair(b.colony, b.arrived);
    });
}

std::span<const ReachStay> ReachTrace::staysOf(ColonyIx colony) const {
    const auto first = std::lower_bound(m_stays.begin(), m_stays.end(), colony,
                                        [](const ReachStay& stay, ColonyIx c) { return stay.colony < c; });
    auto last = first;
    while (last != m_stays.end() && last->colony == colony) ++last;
    return {first, last};
}

std::optional<ReachTrace::Last> ReachTrace::lastReach(ColonyIx colony, Day day) const {
    std::optional<Last> last;
    if (const qint32 r = m_lastReceived[position(colony)]; r >= 0)
        last = Last{m_received[static_cast<size_t>(r)].gift.day, true};
    for (const ReachStay& stay : staysOf(colony)) {
        if (stay.first > day) continue;
        const Day reach = std::max(stay.arrived, std::min({stay.until, day, stay.sourceLast}));
        if (!last || reach > last->day) last = Last{reach, false};
    }
    return last;
}

bool ReachTrace::cleared(ColonyIx colony, Last last, Day day) const {
    if (m_source->livingSuspect) return false;
    return anyWithin(e.findings.negatives.of(colony.value), last.day + e.limits.afbOwnResultDays, day) ||
           e.checks.liftingWithin(colony, last.day + e.limits.afbRecheckDays, day) ||
           releasedFor(e, *m_source, colony, last.byGift ? last.day + 1 : last.day, day);
}

bool ReachTrace::passes(ColonyIx giver, Day day) const {
    if (giver == m_source->colony && day <= m_source->last) return true;
    const auto last = lastReach(giver, day);
    return last && !cleared(giver, *last, day);
}

bool ReachTrace::receives(const Gift& gift) {
    if (!gift.beesOrComb()) return false;
    if (gift.to == m_source->colony && gift.day <= m_source->last) return false;
    qint32& last = m_lastReceived[position(gift.to)];
    const bool fresh = last < 0 || m_received[static_cast<size_t>(last)].gift.day < gift.day;
    const bool bySource = gift.from == m_source->colony && gift.day <= m_source->last;
    if (last < 0) m_receivers.push_back(gift.to);
    m_received.push_back({gift, bySource ? -1 : m_lastReceived[position(gift.from)], last});
    last = static_cast<qint32>(m_received.size()) - 1;
    return fresh;
}

void ReachTrace::collect(qint32 index, std::vector<ReachFact>& facts) {
    const auto judge = [&](ColonyIx colony) {
        if (!e.s.colony(colony).living()) return;
        const auto last = lastReach(colony, e.s.on);
        if (last && !cleared(colony, *last, e.s.on)) facts.push_back(factOf(colony, index, *last));
    };
    for (const ColonyIx colony : m_receivers) judge(colony);
    for (size_t i = 0; i < m_stays.size(); ++i) {
        const ColonyIx colony = m_stays[i].colony;
        if (m_lastReceived[position(colony)] < 0 && (i == 0 || m_stays[i - 1].colony != colony)) judge(colony);
    }
}

ReachFact ReachTrace::factOf(ColonyIx colony, qint32 index, Last last) const {
    ReachFact fact{colony, index, last.day, last.byGift, {}, {}};
    const auto stays = staysOf(colony);
    fact.stays.assign(stays.begin(), stays.end());
    for (qint32 r = m_lastReceived[position(colony)]; r >= 0 && fact.chains.size() < kMostChains;
         r = m_received[static_cast<size_t>(r)].earlier)
        fact.chains.push_back(chainOf(r));
    return fact;
}

ReachFact::Chain ReachTrace::chainOf(qint32 received) const {
    ReachFact::Chain chain;
    for (qint32 r = received; r >= 0; r = m_received[static_cast<size_t>(r)].before)
        chain.gifts.push_back(m_received[static_cast<size_t>(r)].gift);
    const Gift& first = chain.gifts.back();
    if (first.from == m_source->colony) return chain;
    for (const ReachStay& stay : staysOf(first.from))
        if (stay.first <= first.day) chain.stood = stay;
    return chain;
}

} // namespace core::rules
