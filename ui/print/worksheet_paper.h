#pragma once

#include "core/edit/session.h"
#include "core/report/worksheet.h"
#include "core/rules/merge_request.h"
#include "ui/print/paper_choice.h"
#include "ui/window/paper.h"

namespace ui::print {

/// What the pages of that yard say besides the plan. `wish`: the merge day it is planned by, null where none is
/// saved; of `unmet` what is that day's; `colony`: whose card it is. Window and command line print the same.
core::report::WorksheetOptions worksheetOptions(const core::edit::Session& book, core::YardId yard, core::Day on,
                                                const PaperChoice& choice, const core::rules::MergeWish* wish,
                                                const std::vector<core::rules::Unmet>& unmet,
                                                std::optional<core::ColonyId> colony = {});

/// Preview, print and PDF of the merge-day worksheet, for the window: MainWindow::setPaper(worksheetPaper()).
window::Paper worksheetPaper();

} // namespace ui::print
