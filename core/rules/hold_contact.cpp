#include "core/rules/hold_contact.h"

#include <algorithm>

namespace core::rules {

ContactTrace::ContactTrace(const Evidence& evidence, Spread& spread)
    : e(evidence),
      m_spread(spread),
      m_lastContact(e.s.colonies.size(), -1),
      m_lastGave(e.s.colonies.size(), -1),
      m_partUntil(e.s.colonies.size()) {}

void ContactTrace::trace(const std::vector<Source>& sources, qint32 index, std::vector<ContactFact>& facts) {
    m_source = &sources[static_cast<size_t>(index)];
    findGivers();
    m_spread.touch(m_source->colony, m_source->open);
    m_spread.run([this](ColonyIx giver, Day day) { return passes(giver, day); },
                 [this](const Gift& gift) { return receives(gift); });
    collect(index, facts);
    clean();
}

// Backwards in the window, through colonies that became the source's.
void ContactTrace::findGivers() {
    m_parts.push_back({m_source->colony, m_source->close, -1});
    for (size_t i = 0; i < m_parts.size(); ++i) {
        const Part part = m_parts[i];
        for (const Gift& gift : e.gifts.to(part.colony)) {
            if (gift.day > part.until) break;
            if (gift.day >= m_source->open && gift.from != m_source->colony) addGiver(gift, part.through);
        }
    }
    for (const Gift& gift : e.gifts.to(m_source->colony))
        if (gift.day > m_source->close) m_gaveLate.insert_or_assign(gift.from, gift);
}

void ContactTrace::addGiver(const Gift& gift, qint32 through) {
    qint32& last = m_lastGave[position(gift.from)];
    if (last < 0) {
        m_exposed.push_back(gift.from);
        m_spread.touch(gift.from, m_source->open);
    }
    const bool later = last < 0 || m_gave[static_cast<size_t>(last)].gift.day < gift.day;
    Day& partUntil = m_partUntil[position(gift.from)];
    const bool becomesPart = gift.lineage() && gift.day > partUntil;
    if (!later && !becomesPart) return;
    const auto entry = static_cast<qint32>(m_gave.size());
    m_gave.push_back({gift, through});
    if (later) last = entry;
    if (!becomesPart) return;
    partUntil = gift.day;
    m_parts.push_back({gift.from, gift.day, entry});
}

std::optional<Day> ContactTrace::lastContact(ColonyIx colony) const {
    std::optional<Day> last;
    if (const qint32 c = m_lastContact[position(colony)]; c >= 0) last = m_contacts[static_cast<size_t>(c)].gift.day;
    if (const qint32 g = m_lastGave[position(colony)]; g >= 0)
        last = later(last, m_gave[static_cast<size_t>(g)].gift.day);
    if (!last || m_gaveLate.empty()) return last;
    const auto late = m_gaveLate.find(colony);
    return late == m_gaveLate.end() ? last : later(last, late->second.day);
}

bool ContactTrace::answered(ColonyIx colony, Day day) const {
    const Day last = *lastContact(colony);
    const Day result = last + e.limits.afbOwnResultDays;
    return anyWithin(e.findings.negatives.of(colony.value), result, day) ||
           e.checks.liftingWithin(colony, last + e.limits.afbRecheckDays, day) ||
           releasedFor(e, *m_source, colony, last + 1, day);
}

bool ContactTrace::passes(ColonyIx giver, Day day) const {
    if (giver == m_source->colony && day <= m_source->close) return true;
    return lastContact(giver) && !answered(giver, day);
}

bool ContactTrace::receives(const Gift& gift) {
    if (gift.to == m_source->colony && gift.day <= m_source->close) return false;
    qint32& last = m_lastContact[position(gift.to)];
    const bool fresh = last < 0 || m_contacts[static_cast<size_t>(last)].gift.day < gift.day;
    const bool bySource = gift.from == m_source->colony && gift.day <= m_source->close;
    if (last < 0 && m_lastGave[position(gift.to)] < 0) m_exposed.push_back(gift.to);
    m_contacts.push_back({gift, bySource ? -1 : m_lastContact[position(gift.from)], last});
    last = static_cast<qint32>(m_contacts.size()) - 1;
    return fresh;
}

void ContactTrace::collect(qint32 index, std::vector<ContactFact>& facts) {
    for (const ColonyIx colony : m_exposed)
        if (e.s.colony(colony).living() && !answered(colony, e.s.on)) facts.push_back(factOf(colony, index));
}

ContactFact ContactTrace::factOf(ColonyIx colony, qint32 index) const {
    ContactFact fact{colony, index, *lastContact(colony), {}};
    if (const auto late = m_gaveLate.find(colony); late != m_gaveLate.end()) fact.chains.push_back({late->second});
    if (m_lastGave[position(colony)] >= 0) appendGave(colony, fact.chains.emplace_back());
    for (qint32 c = m_lastContact[position(colony)]; c >= 0 && fact.chains.size() < kMostChains;
         c = m_contacts[static_cast<size_t>(c)].earlier) {
        std::vector<Gift>& chain = fact.chains.emplace_back();
        for (qint32 link = c; link >= 0; link = m_contacts[static_cast<size_t>(link)].before)
            chain.push_back(m_contacts[static_cast<size_t>(link)].gift);
        if (chain.back().from != m_source->colony) appendGave(chain.back().from, chain);
    }
    return fact;
}

void ContactTrace::appendGave(ColonyIx giver, std::vector<Gift>& chain) const {
    for (qint32 g = m_lastGave[position(giver)]; g >= 0; g = m_gave[static_cast<size_t>(g)].through)
        chain.push_back(m_gave[static_cast<size_t>(g)].gift);
}

void ContactTrace::clean() {
    for (const ColonyIx colony : m_exposed) m_lastContact[position(colony)] = m_lastGave[position(colony)] = -1;
    for (const Part& part : m_parts) m_partUntil[position(part.colony)] = {};
    m_parts.clear();
    m_gaveLate.clear();
    m_exposed.clear();
    m_contacts.clear();
    m_gave.clear();
}

} // namespace core::rules
