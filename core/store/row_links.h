#pragma once

#include "core/model/row.h"
#include "core/store/database.h"

#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace core::store {

/// One row by table and id.
using RowKey = std::pair<Table, qint64>;

/// Rows firstId .. firstId + count - 1 of one table.
struct IdRange {
    Table table = Table::Visit;
    qint64 firstId = 1;
    qint64 count = 0;
    bool has(const RowKey& key) const {
        return key.first == table && key.second >= firstId && key.second < firstId + count;
    }
};

/// Rows that go together: those by key and all of the ranges.
struct RowGroup {
    std::set<RowKey> rows;
    std::vector<IdRange> ranges;
    bool has(const RowKey& key) const;
};

/// A row outside `with` that points to one of `to`; nullopt: none does.
std::optional<RowKey> rowPointingTo(const Database& db, const IdRange& to, const RowGroup& with);
/// A row to which `row` points and that is neither in the book nor in `with`.
std::optional<RowKey> missingTarget(const Database& db, Table table, const Row& row, const RowGroup& with);
/// A row outside `with` that has what only one row may have and `row` (of this id) has too.
std::optional<RowKey> rowInPlaceOf(const Database& db, const RowKey& key, const Row& row, const RowGroup& with);

} // namespace core::store
