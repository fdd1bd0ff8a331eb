#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"

namespace core::edit {

/// Kit that was quarantined, burned or sterilised with a colony's name is never lost sight of by an edit, an undo or a
/// taking back: where the change leaves less of it, and its colony does not live again by the same change (its kit is
/// on its stand then), one sentence that names it; else empty. `c`: the book before the change.
QString keptApartLost(const EditContext& c, const ChangeSet& change);

} // namespace core::edit
