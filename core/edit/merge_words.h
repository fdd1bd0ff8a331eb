#pragma once

#include "core/edit/edit_context.h"

#include <QString>

#include <vector>

namespace core::edit {

enum class Case { First, Within };

/// "The merge day of Kiln Field on 2026-09-20"; its variant where it is not the first.
QString mergeDayName(const EditContext& c, const MergeDay& day, Case how = Case::First);
/// "K2 + K4".
QString pairName(const EditContext& c, ColonyId a, ColonyId b, Day day);
/// What was changed of what is asked, by its rows: "Pinned K2 + K4 for the merge day of …".
QString mergeChangeText(const EditContext& c, const MergeDay& old, const MergeDay& now,
                        const std::vector<RowChange>& choices);

} // namespace core::edit
