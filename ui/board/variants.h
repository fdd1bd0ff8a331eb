#pragma once

#include "core/edit/session.h"
#include "core/rules/plan_difference.h"
#include "ui/desk/reading.h"

#include <QString>

#include <vector>

namespace ui::board {

/// One variant of a merge day, planned by itself.
struct VariantFigures {
    core::MergeDay day;
    core::rules::Totals totals; ///< of its yard alone
    core::rules::PlanGist gist;
    int minutes = 0; ///< of the crew
};
/// A plan each; `days` are of one yard and the reading's day. Throws Error(Book).
std::vector<VariantFigures> variantFigures(const desk::Reading& reading, const core::edit::Session& book,
                                           const std::vector<core::MergeDay>& days);

/// A union that some variants make and others do not, or with another host.
struct VariantPair {
    QString pair;               ///< "K2 → K4", as the first that makes it
    std::vector<QString> cells; ///< one a variant: "2." in its order of work, how it differs, or a dash
};
std::vector<VariantPair> differingPairs(const std::vector<VariantFigures>& variants);

} // namespace ui::board
