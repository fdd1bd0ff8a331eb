#include "core/rules/hold_efb.h"

#include "core/rules/hold_events.h"

namespace core::rules {

namespace {

bool efbNegativeWithin(const Evidence& e, ColonyIx colony, Day first, Day last) {
    const auto days = e.findings.efbNegatives.of(colony.value);
    for (auto at = std::lower_bound(days.begin(), days.end(), first); at != days.end() && *at <= last; ++at)
        if (!e.treated.within(colony, *at, e.limits.efbClearDays)) return true;
    return false;
}

} // namespace

void traceEfb(const Evidence& e, Spread& spread, std::vector<EventFact>& facts) {
    EventRule rule;
    rule.own = [&](ColonyIx colony) { return e.findings.efb.of(colony.value); };
    rule.backDays = e.limits.efbBackDays;
    rule.countsBack = [](ColonyIx, Day) { return true; };
    rule.answered = [&](ColonyIx colony, Day event, bool, Day day) {
        const Day clear = event + e.limits.efbClearDays;
        return e.checks.fullWithin(colony, clear, day, e.limits.efbClearDays) ||
               efbNegativeWithin(e, colony, clear, day) ||
               anyWithin(e.findings.efbReleases.of(colony.value), event + 1, day);
    };
    traceEvents(e, spread, rule, facts);
}

} // namespace core::rules
