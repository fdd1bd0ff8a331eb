#pragma once

#include "core/rules/plan.h"

// What a finding of the plan says why, in plain sentences with its numbers and limits. The colony is not named where
// the list names it. Patterns, so that paper can say them in Spanish (core/report/worksheet_spanish.cpp). Those that
// carry their words for `advise --json` (holds, cautions, unions, shake-outs, order of boxes) have them there.

namespace core::rules {

/// Its class and the limits of it; of one at risk also what such a colony is expected to give.
Sentences sentencesOf(const Snapshot& s, const Alone& alone);
Sentences sentencesOf(const Snapshot& s, const UnresolvedColony& unresolved);
Sentences sentencesOf(const Snapshot& s, const Separate& separate);
Sentences sentencesOf(const Snapshot& s, const Feed& feed);
Sentences sentencesOf(const Snapshot& s, const Divide& divide);
Sentences sentencesOf(const Snapshot& s, const Due& due);

/// Frees the data of a plan's reasons, for one who only writes the words it has: a big book's JSON needs the room.
void dropReasons(Plan& plan);

} // namespace core::rules
