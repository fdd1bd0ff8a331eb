#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// Mites that fell onto a board under a hive. No rule reads them: no caution, no hold and no plan rests on a count, and
// none is ever turned into mites per 100 bees. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

ChangeSet logMiteFall(const EditContext& c, const MiteFall& fall);   ///< the id is given
ChangeSet changeMiteFall(const EditContext& c, const MiteFall& now); ///< `now.id` names it
ChangeSet takeBackMiteFall(const EditContext& c, MiteFallId id);

} // namespace core::edit
