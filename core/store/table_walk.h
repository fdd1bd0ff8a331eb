#pragma once

#include "core/store/raw_pages.h"
#include "core/store/raw_record.h"

#include <functional>
#include <map>
#include <set>
#include <vector>

namespace core::store {

/// Ids from .. to, both included.
struct IdSpan {
    qint64 from = INT64_MIN;
    qint64 to = INT64_MAX;
    bool has(qint64 id) const { return id >= from && id <= to; }
    friend bool operator==(const IdSpan&, const IdSpan&) = default;
};

/// A row that can be made out.
struct FoundRow {
    QByteArray record;
    bool sure = true; ///< its page is whole; else the row counts only where something else says the same
};

/// The rows of one table as far as its pages can be read.
struct FoundTable {
    RecordShape shape;
    qint64 root = 0;                 ///< 0: nobody knows where it begins
    std::map<qint64, FoundRow> rows; ///< by id
    std::vector<IdSpan> lost;        ///< where rows may be that cannot be read
    qint64 badPages = 0;             ///< that could not be read, or not whole
    bool branchLost = false;         ///< leaves of it may lie where nothing points to
    bool mayLack(qint64 id) const;
};

/// Pages that belong to something: no page belongs to two things.
using UsedPages = std::set<qint64>;

/// Reads the tree from `table.root` on. `goOn` is asked page by page; false stops.
void walkTable(const RawPages& pages, FoundTable& table, UsedPages& used, const std::function<bool()>& goOn);

/// The rows of one leaf; false where it is none of this shape, or not whole.
bool wholeLeaf(const RawPages& pages, qint64 number, const RecordShape& shape, std::map<qint64, FoundRow>& rows,
               UsedPages& used);

} // namespace core::store
