#pragma once

#include "core/report/sheet.h"
#include "core/rules/missing.h"

#include <vector>

namespace core::report {

/// The rows of the sheet for the walk before the day: what each colony lacks, and what is to be written of it.
std::vector<WalkRow> walkRows(const Snapshot& s, const std::vector<rules::ColonyMissing>& missing);

} // namespace core::report
