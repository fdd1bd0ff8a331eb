#pragma once

#include "core/base/day.h"
#include "tests/support/csv_tables.h"

namespace tests::rules {

/// An invented book of one to three northern yards in which everything that a plan rests on occurs: counts, queens,
/// stores, weights, mites, two boxes, gifts, unions, divides, carries, a few holds. No label is used twice. The same
/// seed and day give the same book.
support::CsvTables randomOperation(unsigned seed, core::Day on);

} // namespace tests::rules
