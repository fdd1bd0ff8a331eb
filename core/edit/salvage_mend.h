#pragma once

#include "core/edit/salvage.h"
#include "core/store/database.h"

namespace core::edit {

/// What is left of a book, in a book of its own whose references are not enforced: brought in order where rows are
/// missing. A yard, stand, box kind or hive that others point to gets a row in its place, named as lost; a hive whose
/// places are missing stands on a place named so; what rests on nothing any more is left out. Each is named in
/// `mended` or `leftOut`.
void mendRemains(const store::Database& db, SalvageAccount& account);

/// On each living colony a visit of the day with the brood in doubt: held by rule 4.4.12 until a record lifts it.
/// Returns how many.
int holdForDoubt(const store::Database& db, const QString& note, Day today);

} // namespace core::edit
