#include "core/store/snapshot_reader.h"

#include "core/store/reads.h"
#include "core/store/snapshot_parts.h"

namespace core::store {

namespace {

const Day kLastDay = dayOf(9999, 12, 31);

void begin(SnapshotBuild& b, Day on) {
    b.s.on = on;
    b.s.settings = settings(b.db);
}

/// All that holds are traced by, but brood checks.
void readRecords(SnapshotBuild& b, Day on) {
    begin(b, on);
    readYards(b);
    readColonies(b);
    readStays(b);
    readTransfers(b);
    readLineage(b);
    readResults(b);
    readTreatments(b);
    readSigns(b);
}

} // namespace

Snapshot readSnapshot(const Database& db, Day on, Checks checks) {
    const ReadTransaction oneState(db);
    SnapshotBuild b{db, {}, {}, {}, {}};
    readRecords(b, on);
    readLatest(b);
    readChecks(b, checks);
    return std::move(b.s);
}

Snapshot readForHolds(const Database& db) {
    const ReadTransaction oneState(db);
    SnapshotBuild b{db, {}, {}, {}, {}};
    readRecords(b, kLastDay);
    readChecks(b, Checks::All);
    return std::move(b.s);
}

Snapshot readYardGlance(const Database& db, YardId yard, Day on) {
    const ReadTransaction oneState(db);
    SnapshotBuild b{db, {}, {}, {}, {}, yard};
    begin(b, on);
    readYards(b);
    readColonies(b);
    readStays(b);
    readLineage(b);
    readLatest(b);
    return std::move(b.s);
}

} // namespace core::store
