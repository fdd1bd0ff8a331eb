#pragma once

#include "tests/support/csv_colonies.h"

namespace tests::support {

/// Fills checks, signs and latest; lineage must be there already (unions make two boxes).
void addVisits(core::Snapshot& s, const CsvTables& tables, const ColonyNames& names);

} // namespace tests::support
