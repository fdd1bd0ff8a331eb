#pragma once

#include "core/report/inspector_pages.h"

#include <QString>

// The report for an inspector as it leaves the program. All of it may run beside the window.

namespace ui::print {

std::vector<core::report::Page> inspectorPages(const core::rules::InspectionBook& book,
                                               const core::rules::Inspection& found,
                                               const core::report::PageOrigin& origin,
                                               const core::Progress& progress = {});

/// As a PDF; in place once it is whole. Throws Error(Book) where it cannot be written; Stopped.
void writeInspectorPdf(const core::rules::InspectionBook& book, const core::rules::Inspection& found,
                       const core::report::PageOrigin& origin, const QString& file,
                       const core::Progress& progress = {});

/// A CSV file a table in the folder, which is made where it is missing: "report.csv", "places.csv", … with units in
/// the heads; not recorded is blank. Throws Error(Book), Stopped.
void writeInspectorFolder(const core::rules::InspectionBook& book, const core::rules::Inspection& found,
                          const core::report::PageOrigin& origin, const QString& dir,
                          const core::Progress& progress = {});

} // namespace ui::print
