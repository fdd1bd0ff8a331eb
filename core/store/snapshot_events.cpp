#include "core/store/snapshot_parts.h"

#include <algorithm>

namespace core::store {

namespace {

/// By day; of one day in the order of their ids.
template <class T> void sortByDay(std::vector<T>& rows) {
    std::stable_sort(rows.begin(), rows.end(), [](const T& a, const T& b) { return a.day < b.day; });
}

/// The index of an optional reference: -1 where it is not set.
qint32 optionalAt(const IdIndex& index, const Statement& row, int column) {
    return row.isNull(column) ? -1 : index.at(row.integer(column));
}

/// Whether the one of colony and yard that the row names is in force.
bool names(const Statement& row, ColonyIx colony, int colonyColumn, YardIx yard) {
    return row.isNull(colonyColumn) ? yard.value >= 0 : colony.value >= 0;
}

} // namespace

void readTransfers(SnapshotBuild& b) {
    Statement row = b.db.prepare("SELECT day, giver, receiver, what FROM transfer ORDER BY id");
    while (row.step()) {
        const Day day = row.day(0);
        const ColonyIx from{b.colonyAt.at(row.integer(1))};
        const ColonyIx to{b.colonyAt.at(row.integer(2))};
        if (day > b.s.on || from.value < 0 || to.value < 0) continue;
        b.s.transfers.push_back({day, from, to, enumAt<TransferKind>(row, 3)});
    }
    sortByDay(b.s.transfers);
}

void readLineage(SnapshotBuild& b) {
    Statement row = b.db.prepare("SELECT day, how, colony, into_colony FROM lineage WHERE day <= ? ORDER BY id");
    row.bind(1, b.s.on);
    while (row.step()) {
        const ColonyIx colony{b.colonyAt.at(row.integer(2))};
        const ColonyIx into{b.colonyAt.at(row.integer(3))};
        if (colony.value < 0 || into.value < 0) continue;
        b.s.lineage.push_back({row.day(0), enumAt<LineageHow>(row, 1), colony, into});
    }
    sortByDay(b.s.lineage);
}

void readResults(SnapshotBuild& b) {
    Statement row = b.db.prepare("SELECT colony, yard, day, disease, verdict, method, by_whom, paper FROM result "
                                 "WHERE day <= ? ORDER BY id");
    row.bind(1, b.s.on);
    while (row.step()) {
        const ColonyIx colony{optionalAt(b.colonyAt, row, 0)};
        const YardIx yard{optionalAt(b.yardAt, row, 1)};
        if (!names(row, colony, 0, yard)) continue;
        b.s.results.push_back({row.day(2), colony, yard, enumAt<Disease>(row, 3), enumAt<Verdict>(row, 4),
                               enumAt<Method>(row, 5), row.text(6), row.text(7)});
    }
    sortByDay(b.s.results);
}

void readTreatments(SnapshotBuild& b) {
    Statement row = b.db.prepare("SELECT colony, yard, day, antibiotic, days, product FROM treatment "
                                 "WHERE day <= ? ORDER BY id");
    row.bind(1, b.s.on);
    while (row.step()) {
        const ColonyIx colony{optionalAt(b.colonyAt, row, 0)};
        const YardIx yard{optionalAt(b.yardAt, row, 1)};
        if (!names(row, colony, 0, yard)) continue;
        b.s.treatments.push_back({row.day(2), colony, yard, row.integer(3) != 0, row.optionalInt(4), row.text(5)});
    }
    sortByDay(b.s.treatments);
}

} // namespace core::store
