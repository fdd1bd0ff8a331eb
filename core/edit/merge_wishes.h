#pragma once

#include "core/base/day.h"
#include "core/edit/session.h"
#include "core/rules/merge_request.h"

#include <map>
#include <vector>

namespace core::edit {

/// What is asked of the plans of that day, one wish a yard that has a merge day: of the variant given, where it is
/// saved, else of the one that stands (standingDay). By yard. Throws Error(Book).
std::vector<rules::MergeWish> mergeWishes(const Session& book, Day day, const std::map<YardId, int>& variants = {});

} // namespace core::edit
