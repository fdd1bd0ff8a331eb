#include "core/rules/hold_events.h"

#include <algorithm>
#include <map>

namespace core::rules {

namespace {

class EventTrace {
public:
    EventTrace(const Evidence& evidence, const EventRule& rule) : e(evidence), m_rule(rule) {}

    void run(Spread& spread) {
        for (qint32 i = 0; i < static_cast<qint32>(e.s.colonies.size()); ++i) {
            const auto own = m_rule.own(ColonyIx{i});
            if (own.empty()) continue;
            m_reached.push_back(ColonyIx{i});
            spread.touch(ColonyIx{i}, own.front() - m_rule.backDays);
        }
        spread.run([this](ColonyIx giver, Day day) { return has(giver, day) || foundAfter(giver, day); },
                   [this](const Gift& gift) { return receives(gift); });
    }

    void collect(std::vector<EventFact>& facts) const {
        for (const ColonyIx colony : m_reached) {
            if (!e.s.colony(colony).living() || !has(colony, e.s.on)) continue;
            const auto gift = lastGift(colony);
            const Day event = *lastEvent(colony, e.s.on);
            if (gift && gift->day == event)
                facts.push_back({colony, event, *gift, foundAfter(gift->from, event)});
            else
                facts.push_back({colony, event, std::nullopt, std::nullopt});
        }
    }

private:
    const Gift* lastGift(ColonyIx colony) const {
        const auto found = m_received.find(colony);
        return found == m_received.end() ? nullptr : &found->second;
    }

    std::optional<Day> lastEvent(ColonyIx colony, Day day) const {
        const Gift* gift = lastGift(colony);
        return later(latestUpTo(m_rule.own(colony), day), gift ? std::optional(gift->day) : std::nullopt);
    }

    bool has(ColonyIx colony, Day day) const {
        const auto event = lastEvent(colony, day);
        const Gift* gift = lastGift(colony);
        return event && !m_rule.answered(colony, *event, gift && gift->day == *event, day);
    }

    std::optional<Day> foundAfter(ColonyIx colony, Day day) const {
        const auto own = m_rule.own(colony);
        for (auto at = std::upper_bound(own.begin(), own.end(), day); at != own.end(); ++at) {
            if (*at > day + m_rule.backDays) break;
            if (m_rule.countsBack(colony, *at)) return *at;
        }
        return std::nullopt;
    }

    bool receives(const Gift& gift) {
        if (!gift.beesOrComb()) return false;
        const auto [known, first] = m_received.try_emplace(gift.to, gift);
        if (first && m_rule.own(gift.to).empty()) m_reached.push_back(gift.to);
        if (!first && known->second.day == gift.day) return false;
        known->second = gift;
        return true;
    }

    const Evidence& e;
    const EventRule& m_rule;
    std::map<ColonyIx, Gift> m_received; // the latest that is an event
    std::vector<ColonyIx> m_reached;
};

} // namespace

void traceEvents(const Evidence& e, Spread& spread, const EventRule& rule, std::vector<EventFact>& facts) {
    EventTrace trace(e, rule);
    trace.run(spread);
    trace.collect(facts);
}

} // namespace core::rules
