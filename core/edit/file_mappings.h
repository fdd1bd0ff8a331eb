#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"
#include "core/model/rows.h"

// Ways to read files of other programs, kept under names. What they say is not judged here (exchange/kept_mapping.h
// does). Nothing rests on them. Throws Error(BadData) with one sentence where it cannot be.

namespace core::edit {

/// New, or in place of the one that has its name without regard to case. Its id is given. Empty change: it is kept so
/// already.
ChangeSet keepFileMapping(const EditContext& c, const FileMapping& mapping);
ChangeSet takeBackFileMapping(const EditContext& c, FileMappingId id);

} // namespace core::edit
