#pragma once

#include "core/report/inspector_pages.h"

#include <QString>

// The report for an inspector as it leaves the program.

namespace ui::print {

std::vector<core::report::Page> inspectorPages(const core::rules::InspectionBook& book,
                                               const core::rules::Inspection& found,
                                               const core::report::PageOrigin& origin);

/// As a PDF; in place once it is whole. Throws Error(Book) where it cannot be written.
void writeInspectorPdf(const core::rules::InspectionBook& book, const core::rules::Inspection& found,
                       const core::report::PageOrigin& origin, const QString& file);

/// A CSV file a table in the folder, which is made where it is missing: "report.csv", "places.csv", … with units in
/// the heads; not recorded is blank. Throws Error(Book).
void writeInspectorFolder(const core::rules::InspectionBook& book, const core::rules::Inspection& found,
                          const core::report::PageOrigin& origin, const QString& dir);

} // namespace ui::print
