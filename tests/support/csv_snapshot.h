#pragma once

#include "core/model/snapshot.h"
#include "tests/support/csv_tables.h"

namespace tests::support {

/// What a rule may see on day `on`, straight from CSV rows, without a store. The rows must agree with each other:
/// nothing is checked, and a label that names no colony throws std::runtime_error.
core::Snapshot snapshotOf(const CsvTables& tables, core::Day on);

} // namespace tests::support
