#pragma once

#include "core/store/database.h"

#include <vector>

// Trouble: the records that disease holds begin with (signs afb, efb and brood-doubt; positives and orders).

namespace core::store {

bool anyTrouble(const Database& db);
/// Days of the trouble among the signs or results (`table`) with ids first..last, oldest first, at most `most`.
std::vector<Day> troubleDays(const Database& db, Table table, qint64 first, qint64 last, int most);
/// The ids of the same rows, in their order, at most `most`.
std::vector<qint64> troubleRows(const Database& db, Table table, qint64 first, qint64 last, int most);

} // namespace core::store
