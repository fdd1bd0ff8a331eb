#pragma once

#include "core/edit/edit_context.h"

#include <vector>

namespace core::edit {

/// Throws Error(Hold) with the hold's sentence where one of the colonies is held that day, as the book stands.
void refuseHeld(const EditContext& c, const std::vector<ColonyId>& colonies, Day day);

} // namespace core::edit
