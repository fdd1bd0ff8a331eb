#pragma once

#include "core/rules/hold.h"

#include <span>
#include <vector>

namespace core::rules {

/// What was seen of a colony that foulbrood or a doubt rests on: a sign at its visit of that day, or a positive.
struct SignSeen {
    ColonyIx colony;
    Day day;
};

/// Living colonies held on the snapshot's day because of these (rule 4.4), each once: those themselves, those traced to
/// them as sources, and those that would not be held so were they not recorded. `now`: holds() of the snapshot.
std::vector<ColonyIx> heldBy(const Snapshot& s, std::span<const Hold> now, std::span<const SignSeen> seen);

} // namespace core::rules
