#pragma once

#include "core/base/day.h"
#include "core/edit/session.h"
#include "core/rules/merge_request.h"

#include <map>
#include <optional>
#include <vector>

namespace core::edit {

/// The variant of a yard's merge day that stands: the one whose worksheet is printed (there is one at most), else the
/// first. nullopt: none is saved for that day. Throws Error(Book).
std::optional<MergeDay> standingMergeDay(const Session& book, YardId yard, Day day);

/// What is asked of the plans of that day, one wish a yard that has a merge day: of the variant given, where it is
/// saved, else of the one that stands. By yard. Throws Error(Book).
std::vector<rules::MergeWish> mergeWishes(const Session& book, Day day, const std::map<YardId, int>& variants = {});

} // namespace core::edit
