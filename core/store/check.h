#pragma once

#include "core/base/progress.h"
#include "core/store/database.h"

#include <QString>

#include <vector>

namespace core::store {

/// The health of a book, one sentence a problem, "name: what is wrong: where"; empty when it is sound. SQLite's own
/// checks (`integrity`, `foreign-key`), then ours (invariants.h, `key`, `setting`). At most 20 a name. Whether the
/// history agrees with the rows is checked by the edits, which know its form. Throws Error only where the file cannot
/// be read at all, Stopped where `progress` says so.
std::vector<QString> checkBook(const Database& db, const Progress& progress = {});

} // namespace core::store
