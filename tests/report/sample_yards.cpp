#include "tests/report/sample_yards.h"

#include "tests/support/csv_snapshot.h"
#include "tests/support/csv_tables.h"

namespace tests::report {

using tests::support::CsvRow;
using tests::support::CsvTables;

namespace {

Sample planned(core::Snapshot s, const QString& yard) {
    Sample out{std::move(s), {}, {}};
    out.yard = *out.s.yardNamed(yard);
    core::rules::PlanRequest request;
    request.yards = {out.yard};
    out.plan = core::rules::advise(out.s, request);
    return out;
}

CsvRow hive(const QString& label, int i) {
    return {{"colony", label},
            {"yard", "Long Acre"},
            {"stand", QString::number(i + 1)},
            {"x_m", QString::number(i % 10 * 1.5)},
            {"y_m", QString::number(i / 10 * 2.5)},
            {"heading_deg", i % 7 == 0 ? "135" : "180"},
            {"since", "2025-05-01"}};
}

CsvTables longAcre() { return {{"yards", {{{"yard", "Long Acre"}, {"gate_x_m", "0"}, {"gate_y_m", "-2"}}}}}; }

CsvRow visit(const QString& label, const QString& frames, const QString& checked) {
    return {{"colony", label}, {"date", "2026-09-12"}, {"bees_top", frames},       {"stores_frames", "3"},
            {"queen", "eggs"}, {"brood_frames", "6"},  {"brood_checked", checked}, {"gross_kg", "30"}};
}

} // namespace

Sample workedYard(const QString& folder, const QString& yard, const QString& day) {
    const CsvTables tables = tests::support::tablesOfFolder(QStringLiteral(YW_TEST_DATA "/yards/") + folder);
    return planned(tests::support::snapshotOf(tables, *core::parseIsoDay(day)), yard);
}

Sample yardOf60() {
    static const char* const kFrames[] = {"5", "3", "3.5", "5.5", "4.25", "2.75"};
    CsvTables tables = longAcre();
    for (int i = 0; i < 60; ++i) {
        const QString label = QStringLiteral("A%1").arg(i + 1);
        tables["colonies"].push_back(hive(label, i));
        tables["visits"].push_back(visit(label, i % 19 == 5 ? "1.5" : kFrames[i % 6], i % 9 == 4 ? "1" : "6"));
    }
    return planned(tests::support::snapshotOf(tables, core::dayOf(2026, 9, 20)), QStringLiteral("Long Acre"));
}

Sample heldYard(int count, bool longNames) {
    CsvTables tables = longAcre();
    for (int i = 0; i < count; ++i) {
        QString label = QStringLiteral("H%1").arg(i + 1);
        if (longNames) label = label + QString(60 - label.size(), QLatin1Char('w'));
        tables["colonies"].push_back(hive(label, i));
        tables["visits"].push_back(visit(label, "4", "0"));
    }
    return planned(tests::support::snapshotOf(tables, core::dayOf(2026, 9, 20)), QStringLiteral("Long Acre"));
}

Sample longNamedYard() {
    static const char* const kFrames[] = {"5", "3", "3.5", "1.5"};
    CsvTables tables = longAcre();
    for (int i = 0; i < 12; ++i) {
        QString label = QStringLiteral("Hive %1 ").arg(i + 1);
        label += QString(60 - label.size(), QLatin1Char('W'));
        tables["colonies"].push_back(hive(label, i));
        tables["visits"].push_back(visit(label, kFrames[i % 4], "6"));
    }
    return planned(tests::support::snapshotOf(tables, core::dayOf(2026, 9, 20)), QStringLiteral("Long Acre"));
}

} // namespace tests::report
