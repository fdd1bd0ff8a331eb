#pragma once

#include "core/model/row.h"

namespace core {

/// Positions of the table's days in columnsOf(table).
std::vector<size_t> dayColumns(Table table);

/// Whether each day of the row is one of the calendar. What the schema lets pass may be none: SQLite takes 2026-02-30
/// for a day, and would go on to reckon with it as 2026-03-02.
bool daysExist(Table table, const Row& row);

} // namespace core
