#include "core/store/snapshot_reader.h"

#include "core/store/reads.h"
#include "core/store/snapshot_parts.h"

namespace core::store {

Snapshot readSnapshot(const Database& db, Day on, Checks checks) {
    const ReadTransaction oneState(db);
    SnapshotBuild b{db, {}, {}, {}, {}};
    b.s.on = on;
    b.s.settings = settings(db);
    readYards(b);
    readColonies(b);
    readStays(b);
    readTransfers(b);
    readLineage(b);
    readResults(b);
    readTreatments(b);
    readSigns(b);
    readLatest(b);
    readChecks(b, checks);
    return std::move(b.s);
}

} // namespace core::store
