#pragma once

#include "core/rules/hold.h"

namespace core::rules {

struct HeldThen {
    ColonyId colony;
    HoldKind kind = HoldKind::BroodNotChecked;
    friend bool operator==(const HeldThen&, const HeldThen&) = default;
};

/// What a book knew on a day, for holds alone, out of all that it knows (without `latest`; names are those of the last
/// day). `whole`: read as Session::snapshotForHolds() does.
Snapshot forHoldsThen(const Snapshot& whole, Day on);

/// Rule 4.4 on any day of a book: the same colonies and kinds as holds() of that day's snapshot, by colony, then kind.
std::vector<HeldThen> holdsThen(const Snapshot& whole, Day on);

} // namespace core::rules
