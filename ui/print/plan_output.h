#pragma once

#include "ui/print/plan_sheet.h"

class QWidget;

namespace ui::print {

// Each writes beside the file and renames when whole; an existing one is replaced. They throw Error(Book) where it
// cannot be written; then nothing is there that was not.

/// All sheets, and the lists of what is selected; vectors and real text.
void writePlanPdf(const PlanSheetJob& job, const QString& file);
/// The whole yard on one sheet, in millimetres.
void writePlanSvg(const PlanSheetJob& job, const QString& file);
/// The same, 300 dots an inch.
void writePlanPng(const PlanSheetJob& job, const QString& file);

/// Asks for the printer, and prints unless that is cancelled.
void printPlan(QWidget* parent, const PlanSheetJob& job);

} // namespace ui::print
