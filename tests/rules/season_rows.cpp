#include "tests/rules/season_rows.h"

#include "tests/support/csv_cells.h"

#include <algorithm>

namespace tests::rules {

using namespace core;

namespace {

std::optional<Quarters> quartersOf(const support::CsvRow& row, QStringView column) {
    const auto hundredths = support::scaled(row, column, 2);
    return hundredths ? std::optional(Quarters{static_cast<qint32>(*hundredths / 25)}) : std::nullopt;
}

Visit visitOf(const support::CsvRow& row, ColonyId colony) {
    Visit v;
    v.colony = colony;
    v.day = support::day(row, u"date");
    v.boxes = support::whole(row, u"boxes");
    v.beesTop = quartersOf(row, u"bees_top");
    v.beesBottom = quartersOf(row, u"bees_bottom");
    v.upperBeesTop = quartersOf(row, u"upper_bees_top");
    v.upperBeesBottom = quartersOf(row, u"upper_bees_bottom");
    v.mites = support::whole(row, u"mites");
    v.miteSample = support::whole(row, u"mite_sample");
    return v;
}

} // namespace

std::vector<Visit> visitRows(const Snapshot& s, const support::CsvTables& tables) {
    std::vector<Visit> visits;
    for (const support::CsvRow& row : support::rowsOf(tables, u"visits"))
        if (const auto colony = s.colonyNamed(support::cell(row, u"colony")))
            visits.push_back(visitOf(row, s.colony(*colony).id));
    std::ranges::stable_sort(visits, {}, &Visit::day);
    return visits;
}

Period::Period(const support::CsvTables& tables, Day from, Day until)
    : before(support::snapshotOf(tables, from - 1)),
      s(support::snapshotOf(tables, until)),
      visits(visitRows(s, tables)) {
    std::erase_if(visits, [&](const Visit& v) { return v.day < from || v.day > until; });
}

Day iso(const QString& text) { return parseIsoDay(text).value(); }

} // namespace tests::rules
