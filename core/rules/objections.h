#pragma once

#include "core/rules/day_view.h"
#include "core/rules/explain.h"
#include "core/rules/pairs.h"

#include <vector>

// Rule 4.7: each part that stands against a union, in a beekeeper's words.

namespace core::rules {

/// The part, 1 to 10, that `judged` says stands against the two.
Objection objection(const DayView& view, ColonyIx a, ColonyIx b, const PairJudgement& judged, int part);

/// By part, 1 to 10; empty where the two may unite.
std::vector<Objection> objections(const DayView& view, ColonyIx a, ColonyIx b);

} // namespace core::rules
