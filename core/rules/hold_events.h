#pragma once

#include "core/rules/hold_efb.h"

#include <functional>

namespace core::rules {

/// What rules 4.4.11 and 4.4.12 differ in.
struct EventRule {
    std::function<std::span<const Day>(ColonyIx)> own; ///< signs and findings of its own
    int backDays = 0; ///< a gift counts that was made so long before the giver's own event
    std::function<bool(ColonyIx, Day own)> countsBack; ///< whether an own event counts for gifts before it
    /// Whether a record dated up to `day` answers the event; `gift`: one of its events that day is a gift.
    std::function<bool(ColonyIx, Day event, bool gift, Day day)> answered;
};

/// Adds a fact for each living colony whose latest event is not answered on the snapshot's day.
void traceEvents(const Evidence& e, Spread& spread, const EventRule& rule, std::vector<EventFact>& facts);

} // namespace core::rules
