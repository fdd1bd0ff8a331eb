#pragma once

#include "core/base/day.h"
#include "core/edit/history.h"
#include "core/model/row.h"
#include "core/model/rows.h"

#include <QString>

namespace core::edit {

/// How the words name what a row points to. Of rows that are not in the book any more: as they were.
class RowNames {
public:
    virtual ~RowNames() = default;
    /// As on that day, where one is given.
    virtual QString colony(ColonyId id, std::optional<Day> day) const = 0;
    virtual QString yard(YardId id) const = 0;
    virtual QString stand(StandId id) const = 0; ///< with its yard
    virtual QString boxKind(BoxKindId id) const = 0;
    virtual QString visit(VisitId id) const = 0; ///< "K5 on 2026-09-14"
};

/// One row change as a beekeeper reads it: frames and kilograms as decimals, days, names; "not recorded" for NULL.
ChangeWords changeWords(const RowChange& change, const RowNames& names);
/// "1420 visits" of a range.
ChangeWords rangeWords(Table table, qint64 count, ChangeWords::How how);

} // namespace core::edit
