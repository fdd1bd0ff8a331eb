#pragma once

#include "core/model/rows.h"
#include "core/rules/day_view.h"
#include "core/rules/plan.h"

#include <QString>

#include <vector>

// What is asked of the plan of a merge day (MergeDay and its choices) as a request, and the plan that honours it. The
// book changes after something was asked: what can be no more is passed over, and said.

namespace core::rules {

/// One merge day as the book keeps it.
struct MergeWish {
    MergeDay day;
    std::vector<MergeChoice> choices;
    std::vector<DivideChoice> divides = {};
};

/// What is asked and cannot be. `choice` is not set of a limit.
struct Unmet {
    MergeDayId day;
    std::optional<MergeChoice> choice;
    QString because; ///< one sentence
};

struct MergeRequest {
    PlanRequest request; ///< of all yards; never refused
    std::vector<Unmet> unmet;
};

/// Wishes of other days, or of a yard that is closed, are passed over; so is what was asked of colonies that ended on
/// the day itself: it is done. At most one wish a yard.
MergeRequest mergeRequest(const DayView& view, const std::vector<MergeWish>& wishes);

struct AskedPlan {
    Plan plan;
    std::vector<Unmet> unmet;
    PlanRequest request; ///< what the plan was made by
};
/// The plan of all yards as it is asked for.
AskedPlan adviseAsAsked(const Snapshot& s, const std::vector<MergeWish>& wishes);

/// Unions that the crew makes in that time: one for each two people (`crew.people`; one alone has a barrow) in each
/// `crew.minutes_per_union`. An assumption.
int unionsWithin(const Settings& settings, int minutes);
/// Minutes that the crew needs for so many unions.
int minutesFor(const Settings& settings, int unions);
/// The limit of the day: the fewer of unions asked for and what its minutes allow.
std::optional<int> mostUnionsOf(const Settings& settings, const MergeDay& day);

} // namespace core::rules
