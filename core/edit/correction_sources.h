#pragma once

#include "core/edit/change_set.h"
#include "core/store/database.h"

namespace core::edit {

/// A hold that begins with one record, and the record's day.
struct Beginning {
    QString hold; ///< "5: afb-suspected"
    Day day;
};

/// The holds that begin with the very records that the change deletes or alters in what rules read: a sign of brood
/// disease, a positive, an order, none of them answered on its own day. Reads the book as it is before the change; of
/// ranges of rows the first few.
std::vector<Beginning> beginningsIn(const store::Database& db, const ChangeSet& change);

} // namespace core::edit
