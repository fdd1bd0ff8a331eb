#pragma once

#include "core/rules/hold_evidence.h"

#include <vector>

// What the rules outside of 4.4 ask about American foulbrood: who is confirmed or suspected (4.4.5), and to when a
// source of today may spread it (4.4.6). Ended colonies too.

namespace core::rules {

enum class AfbState { Clear, Suspected, Confirmed };
AfbState afbState(const Evidence& evidence, ColonyIx colony);

/// A colony that is confirmed or suspected on the day: a source that is not a past one.
struct AfbSource {
    ColonyIx colony;
    YardIx yard; ///< where it stands or stood last
    Day last;    ///< its last day as a source
};
/// By colony.
std::vector<AfbSource> afbSources(const Evidence& evidence);

} // namespace core::rules
