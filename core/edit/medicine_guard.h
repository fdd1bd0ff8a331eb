#pragma once

#include "core/base/day.h"
#include "core/edit/change_set.h"
#include "core/store/database.h"

namespace core::edit {

/// What stands in the medicine book is corrected, never erased, while the years of `records.years` from its last day
/// (or its disposal, where that is later) have not passed: where the change removes a treatment or alters a field of it
/// that says something, or the day its strips came out, one sentence that names it; the same where the setting is
/// lowered; else empty. To fill in a blank field is no correction. Reads the book as it is before the change.
/// Sources: Regulation (EU) 2019/6 article 108; Veterinary Medicines Regulations 2013: at least five years.
QString medicineAltered(const store::Database& db, const ChangeSet& change, Day today);

} // namespace core::edit
