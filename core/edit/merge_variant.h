#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"

#include <optional>

namespace core::edit {

constexpr int kMergeVariants = 3; ///< of a yard's merge day, side by side

/// Another variant of a merge day, as the first number that is free: a copy of all that is asked of `of`, its divides
/// too. Not set: nothing is kept yet; then what the rules propose is kept as variant 1 beside it. Throws
/// Error(BadData): three are there, something came of a strip, `of` is of another day or gone.
ChangeSet addMergeVariant(const EditContext& c, YardId yard, Day day, std::optional<MergeDayId> of);

} // namespace core::edit
