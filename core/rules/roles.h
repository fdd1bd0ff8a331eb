#pragma once

#include "core/rules/day_view.h"
#include "core/rules/plan.h"

// Rule 4.8: who is carried to whom, which box comes on top, whose queen stays.

namespace core::rules {

/// What decides which colony is moved.
enum class MovedFor { FewerBees, NoQueen, LighterHive, LaterLabel };

struct Roles {
    ColonyIx moved, host, lower, upper;
    MovedFor reason = MovedFor::FewerBees;
    QueenPlan queen = QueenPlan::LeaveBoth;
};

/// `a` and `b` both have a strength, and not both lack a queen.
Roles rolesOf(const DayView& view, ColonyIx a, ColonyIx b);

} // namespace core::rules
