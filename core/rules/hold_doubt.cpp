#include "core/rules/hold_doubt.h"

#include "core/rules/hold_events.h"

namespace core::rules {

void traceDoubt(const Evidence& e, Spread& spread, std::vector<EventFact>& facts) {
    EventRule rule;
    rule.own = [&](ColonyIx colony) { return e.findings.doubts.of(colony.value); };
    rule.backDays = e.limits.doubtBackDays;
    rule.countsBack = [&](ColonyIx colony, Day own) {
        return !anyWithin(e.findings.negatives.of(colony.value), own, own);
    };
    rule.answered = [&](ColonyIx colony, Day event, bool gift, Day day) {
        const Day recheck = event + e.limits.doubtRecheckDays;
        return e.checks.liftingWithin(colony, recheck, day) ||
               anyWithin(e.findings.negatives.of(colony.value), gift ? recheck : event, day) ||
               anyWithin(e.findings.releases.of(colony.value), event + 1, day);
    };
    traceEvents(e, spread, rule, facts);
}

} // namespace core::rules
