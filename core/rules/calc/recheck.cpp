#include "core/rules/calc/recheck.h"

#include <algorithm>

namespace core::rules::calc {

Day firstDayAfter(Day last, int days, std::optional<Day> treated, int masked) {
    const Day first = last + days;
    return treated ? std::max(first, *treated + (masked + 1)) : first;
}

Recheck afbContactRecheck(Day lastContact, std::optional<Day> treated, const Settings& s) {
    return {lastContact + s.afbOwnResultDays, firstDayAfter(lastContact, s.afbRecheckDays, treated, s.traceMaskedDays)};
}

Recheck efbRecheck(Day lastEvent, std::optional<Day> treated, const Settings& s) {
    const Day clear = firstDayAfter(lastEvent, s.efbClearDays, treated, s.efbClearDays);
    return {clear, clear};
}

Recheck doubtRecheck(Day lastEvent, bool gift, std::optional<Day> treated, const Settings& s) {
    return {gift ? lastEvent + s.doubtRecheckDays : lastEvent,
            firstDayAfter(lastEvent, s.doubtRecheckDays, treated, s.traceMaskedDays)};
}

Quarantine quarantineFrom(Day arrived, const Settings& settings) {
    const Recheck efb = efbRecheck(arrived, {}, settings);
    const Recheck afb = afbContactRecheck(arrived, {}, settings);
    return {efb, afb, std::max({efb.check, afb.negative, afb.check})};
}

Day withoutTropilaelaps(Day withoutBroodSince) { return withoutBroodSince + 22; }

} // namespace core::rules::calc
