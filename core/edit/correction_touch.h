#pragma once

#include "core/base/day.h"
#include "core/base/id.h"
#include "core/edit/change_set.h"
#include "core/store/database.h"

#include <set>

namespace core::edit {

/// The days, colonies and yards of the rows that a change alters or deletes, as they are before it and after.
struct Touched {
    std::set<Day> days; ///< of the records as they are before it
    std::set<Day>
        edges; ///< of the records as they are after it; ends of lives and stays, and the last days before them
    std::set<ColonyId> colonies;
    std::set<YardId> yards;
    std::set<ColonyId> endedNow; ///< living before it, ended after: an end added
    bool wholeBook = false;      ///< it deletes ranges of rows, or alters a setting: any colony may be concerned

    std::optional<Day> first() const; ///< of days and edges
};

/// Reads the book as it is before the change. Of ranges the days of the first few signs, positives and orders.
Touched touchedBy(const store::Database& db, const ChangeSet& change);

} // namespace core::edit
