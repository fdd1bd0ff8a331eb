#pragma once

#include "core/edit/salvage.h"
#include "tests/reliability/workload.h"

#include <map>
#include <optional>
#include <set>
#include <string>

namespace tests::reliability {

/// All that a book says, to be held against what is salvaged of it.
struct WholeBook {
    using Rows = std::map<qint64, Row>;
    std::array<Rows, kTableCount> rows;
    std::set<qint64> held; ///< colonies
    std::string history;
    const Rows& of(Table table) const { return rows[static_cast<size_t>(table)]; }
};
WholeBook wholeBook(const QString& path, const Clock& clock);

/// A book of each kind of record, in which holds of every kind rest on rows written one by one and on rows of imports.
/// A backup lies beside it, of some time before its last records.
void makeHeldBook(Session& session, const QString& folder, int random, const QString& backup);

void importVisits(Session& session, const QString& path, const QByteArray& text);

/// Salvages `damaged` into a new book and holds all against `original`: no row is invented or altered but where that is
/// said, what is lost is said, each hive that was held is held, the new book is in order, and the damaged file is as it
/// was. Fails the test where one is not so. nullopt: nothing could be read, and that was said.
std::optional<SalvageAccount> salvageAndCompare(const WholeBook& original, const SalvageFrom& from, const QString& to,
                                                const Clock& clock, const std::string& what);

} // namespace tests::reliability
