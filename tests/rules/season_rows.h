#pragma once

#include "core/model/rows.h"
#include "core/rules/season_book.h"
#include "tests/support/csv_snapshot.h"

namespace tests::rules {

/// The visits of the tables as rows of the book, by day; each label is used once, and its id is that of `s`.
std::vector<core::Visit> visitRows(const core::Snapshot& s, const support::CsvTables& tables);

/// A period of invented or small books, with all that figures rest on.
struct Period {
    core::Snapshot before, s;
    std::vector<core::Visit> visits;
    std::vector<core::Feeding> feedings = {};

    Period(const support::CsvTables& tables, core::Day from, core::Day until);
    core::rules::SeasonBook book(std::optional<core::YardIx> yard = {}) const {
        return {before.on + 1, before, s, yard, visits, feedings};
    }
    core::YardIx yard(const QString& name) const { return s.yardNamed(name).value(); }
    core::ColonyId id(const QString& label) const { return s.colony(s.colonyNamed(label).value()).id; }
};

core::Day iso(const QString& text);

} // namespace tests::rules
