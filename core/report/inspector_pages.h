#pragma once

#include "core/report/page_origin.h"
#include "core/report/paper_table.h"
#include "core/rules/inspection_report.h"

#include <vector>

// The report for an inspector: its tables, and the same as pages. It says what is recorded and no more: what is not
// recorded is "—", a check without a sign is "no signs recorded" and never "free of disease" (WOAH Terrestrial Code
// art. 9.2.1: colonies without signs often carry spores).

namespace core::report {

/// In the order of the pages; the first is the head: who, when, which yards.
std::vector<PaperTable> inspectorTables(const rules::InspectionBook& book, const rules::Inspection& found,
                                        const PageOrigin& origin);
QString inspectorTitle();
/// "3 yards from 2025-09-21 to 2026-09-20: 42 colonies on the last day, 5 of them held."
QString inspectorSummary(const rules::InspectionBook& book, const rules::Inspection& found);

/// Throws Stopped.
std::vector<Page> inspectorPages(const rules::InspectionBook& book, const rules::Inspection& found,
                                 const PageOrigin& origin, const TextMeasure& measure, const Progress& progress = {});

} // namespace core::report
