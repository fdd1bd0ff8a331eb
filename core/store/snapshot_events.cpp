#include "core/store/snapshot_parts.h"

#include <algorithm>

namespace core::store {

namespace {

/// By day; of one day in the order of their ids.
template <class T> void sortByDay(std::vector<T>& rows) {
    std::stable_sort(rows.begin(), rows.end(), [](const T& a, const T& b) { return a.day < b.day; });
}

/// Whom a result or treatment is of: the first two columns.
struct Whose {
    ColonyIx colony{-1};
    YardIx yard{-1};
    bool inForce() const { return colony.value >= 0 || yard.value >= 0; }
};

Whose whose(const SnapshotBuild& b, const Statement& row) {
    if (!row.isNull(0)) return {{colonyNamed(b, row.integer(0))}, {-1}};
    if (row.isNull(1)) throw brokenLink();
    return {{-1}, {neededAt(b.yardAt, row.integer(1))}};
}

} // namespace

void readTransfers(SnapshotBuild& b) {
    Statement row = b.db.prepare("SELECT day, giver, receiver, what FROM transfer ORDER BY id");
    while (row.step()) {
        const Day day = row.day(0);
        if (day > b.s.on) continue;
        const ColonyIx from{colonyNamed(b, row.integer(1))};
        const ColonyIx to{colonyNamed(b, row.integer(2))};
        if (from.value < 0 || to.value < 0) continue;
        b.s.transfers.push_back({day, from, to, enumAt<TransferKind>(row, 3)});
    }
    sortByDay(b.s.transfers);
}

void readLineage(SnapshotBuild& b) {
    Statement row = b.db.prepare("SELECT day, how, colony, into_colony FROM lineage WHERE day <= ? ORDER BY id");
    row.bind(1, b.s.on);
    while (row.step()) {
        if (b.only && (b.colonyAt.at(row.integer(2)) < 0 || b.colonyAt.at(row.integer(3)) < 0)) continue;
        const ColonyIx colony{colonyNamed(b, row.integer(2))};
        const ColonyIx into{colonyNamed(b, row.integer(3))};
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
        const Whose of = whose(b, row);
        if (!of.inForce()) continue;
        b.s.results.push_back({row.day(2), of.colony, of.yard, enumAt<Disease>(row, 3), enumAt<Verdict>(row, 4),
                               enumAt<Method>(row, 5), row.text(6), row.text(7)});
    }
    sortByDay(b.s.results);
}

void readTreatments(SnapshotBuild& b) {
    Statement row = b.db.prepare("SELECT colony, yard, day, antibiotic, days, product FROM treatment "
                                 "WHERE day <= ? ORDER BY id");
    row.bind(1, b.s.on);
    while (row.step()) {
        const Whose of = whose(b, row);
        if (!of.inForce()) continue;
        b.s.treatments.push_back(
            {row.day(2), of.colony, of.yard, row.integer(3) != 0, row.optionalInt(4), row.text(5)});
    }
    sortByDay(b.s.treatments);
}

} // namespace core::store
