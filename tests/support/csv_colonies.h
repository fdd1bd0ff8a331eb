#pragma once

#include "core/model/snapshot.h"
#include "tests/support/csv_cells.h"

namespace tests::support {

/// Finds the colony that a label means on a date: the one with the latest `since` on or before it, or LABEL@SINCE.
class ColonyNames {
public:
    void add(const QString& label, core::Day since, core::ColonyIx ix);
    /// Throws std::runtime_error where there is none. A colony that begins after the snapshot's day has no index (-1).
    core::ColonyIx at(const QString& name, core::Day date) const;

private:
    std::map<QString, std::map<core::Day, core::ColonyIx>> m_bySince;
};

/// Fills colonies and stays, ends by lineage too; `latest` gets its boxes at first.
ColonyNames addColonies(core::Snapshot& s, const CsvTables& tables);

} // namespace tests::support
