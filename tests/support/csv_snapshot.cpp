#include "tests/support/csv_snapshot.h"

#include "core/base/natural_order.h"
#include "tests/support/csv_colonies.h"
#include "tests/support/csv_visits.h"

#include "core/model/setting_table.h"

#include <algorithm>
#include <stdexcept>

namespace tests::support {

using namespace core;

namespace {

template <class T> void sortByDay(std::vector<T>& rows) {
    std::stable_sort(rows.begin(), rows.end(), [](const T& a, const T& b) { return a.day < b.day; });
}

void addYards(Snapshot& s, const CsvTables& tables) {
    qint64 id = 0;
    for (const CsvRow& row : rowsOf(tables, u"yards")) {
        SnapYard& yard = s.yards.emplace_back();
        yard.id = {++id};
        yard.name = cell(row, u"yard");
        yard.latitudeDeg = decimal(row, u"latitude_deg");
        yard.longitudeDeg = decimal(row, u"longitude_deg");
        yard.gate = {millimetres(row, u"gate_x_m"), millimetres(row, u"gate_y_m")};
    }
    std::sort(s.yards.begin(), s.yards.end(),
              [](const SnapYard& a, const SnapYard& b) { return naturalCompare(a.name, b.name) < 0; });
}

void addBoxKinds(Snapshot& s, const CsvTables& tables) {
    const std::pair<const char16_t*, int> shipped[] = {
        {u"langstroth-10", 10}, {u"langstroth-8", 8}, {u"dadant-12", 12}, {u"national-11", 11}, {u"zander-10", 10}};
    qint64 id = 0;
    for (const auto& [name, frames] : shipped) s.boxKinds.push_back({{++id}, QString::fromUtf16(name), frames, {}, {}});
    for (const CsvRow& row : rowsOf(tables, u"box_kinds")) {
        SnapBoxKind kind{
            {++id}, cell(row, u"box"), *whole(row, u"frames"), whole(row, u"width_mm"), whole(row, u"length_mm")};
        const auto same = std::find_if(s.boxKinds.begin(), s.boxKinds.end(),
                                       [&](const SnapBoxKind& k) { return k.name == kind.name; });
        if (same == s.boxKinds.end()) {
            s.boxKinds.push_back(kind);
        } else {
            kind.id = same->id;
            *same = kind;
        }
    }
}

void addTransfers(Snapshot& s, const CsvTables& tables, const ColonyNames& names) {
    for (const CsvRow& row : rowsOf(tables, u"transfers")) {
        const Day d = day(row, u"date");
        if (d > s.on) continue;
        s.transfers.push_back(
            {d, names.at(cell(row, u"from"), d), names.at(cell(row, u"to"), d), enumOf<TransferKind>(row, u"what")});
    }
    sortByDay(s.transfers);
}

void addLineage(Snapshot& s, const CsvTables& tables, const ColonyNames& names) {
    for (const CsvRow& row : rowsOf(tables, u"lineage")) {
        const Day d = day(row, u"date");
        if (d > s.on) continue;
        s.lineage.push_back(
            {d, enumOf<LineageHow>(row, u"how"), names.at(cell(row, u"colony"), d), names.at(cell(row, u"into"), d)});
    }
    sortByDay(s.lineage);
}

YardIx yardOf(const Snapshot& s, const CsvRow& row) {
    const auto yard = s.yardNamed(cell(row, u"yard"));
    if (!yard) throw std::runtime_error("no such yard: " + cell(row, u"yard").toStdString());
    return *yard;
}

void addResults(Snapshot& s, const CsvTables& tables, const ColonyNames& names) {
    for (const CsvRow& row : rowsOf(tables, u"results")) {
        SnapResult result;
        result.day = day(row, u"date");
        if (result.day > s.on) continue;
        if (cell(row, u"colony").isEmpty())
            result.yard = yardOf(s, row);
        else
            result.colony = names.at(cell(row, u"colony"), result.day);
        result.disease = enumOf<Disease>(row, u"disease");
        result.verdict = enumOf<Verdict>(row, u"result");
        result.method = enumOf<Method>(row, u"method");
        result.by = cell(row, u"by");
        result.paper = cell(row, u"paper");
        s.results.push_back(result);
    }
    sortByDay(s.results);
}

void addTreatments(Snapshot& s, const CsvTables& tables, const ColonyNames& names) {
    for (const CsvRow& row : rowsOf(tables, u"treatments")) {
        SnapTreatment treatment;
        treatment.day = day(row, u"date");
        if (treatment.day > s.on) continue;
        if (cell(row, u"colony").isEmpty())
            treatment.yard = yardOf(s, row);
        else
            treatment.colony = names.at(cell(row, u"colony"), treatment.day);
        treatment.antibiotic = cell(row, u"antibiotic") == u"yes";
        treatment.days = whole(row, u"days");
        treatment.product = cell(row, u"product");
        s.treatments.push_back(treatment);
    }
    sortByDay(s.treatments);
}

} // namespace

Snapshot snapshotOf(const CsvTables& tables, Day on) {
    Snapshot s;
    s.on = on;
    for (const CsvRow& row : rowsOf(tables, u"settings"))
        if (!applySetting(s.settings, cell(row, u"name"), cell(row, u"value")))
            throw std::runtime_error("a setting out of its range: " + cell(row, u"name").toStdString());
    addYards(s, tables);
    addBoxKinds(s, tables);
    const ColonyNames names = addColonies(s, tables);
    addTransfers(s, tables, names);
    addLineage(s, tables, names);
    addResults(s, tables, names);
    addTreatments(s, tables, names);
    addVisits(s, tables, names);
    return s;
}

} // namespace tests::support
