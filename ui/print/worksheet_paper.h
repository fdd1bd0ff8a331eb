#pragma once

#include "ui/window/paper.h"

namespace ui::print {

/// Preview, print and PDF of the merge-day worksheet, for the window: MainWindow::setPaper(worksheetPaper()).
window::Paper worksheetPaper();

} // namespace ui::print
