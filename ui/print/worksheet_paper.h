#pragma once

#include "core/report/worksheet.h"
#include "ui/window/paper.h"

namespace ui::print {

/// Letter where the system measures in inches, else A4.
core::report::Paper usualPaper();

/// Preview, print and PDF of the merge-day worksheet, for the window: MainWindow::setPaper(worksheetPaper()).
window::Paper worksheetPaper();

} // namespace ui::print
