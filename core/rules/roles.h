#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"
#include "core/rules/unions.h"

// Rule 4.8: who is carried to whom, which box comes on top, whose queen stays.

namespace core::rules {

/// What decides which colony is moved.
enum class MovedFor { FewerBees, NoQueen, LighterHive, LaterLabel, Asked };

struct Roles {
    ColonyIx moved, host, lower, upper;
    MovedFor reason = MovedFor::FewerBees;
    QueenPlan queen = QueenPlan::LeaveBoth;
    bool topAsked = false; ///< and not what 4.8 says
};

/// Both have a strength, and not both lack a queen. What was asked for goes before the rule.
Roles rolesOf(const DayView& view, const ChosenPair& pair);

} // namespace core::rules
