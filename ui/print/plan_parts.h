#pragma once

#include "ui/print/plan_sheet.h"

#include <memory>
#include <vector>

namespace ui::print {

/// The sheets of a yard: the whole of it first. Where labels find no room on that, parts of the yard follow on sheets
/// of their own, each hive on one of them.
std::vector<std::unique_ptr<PlanSheet>> planSheets(const PlanSheetJob& job);

/// For a file, on a larger sheet where the usual one has no room for every label.
std::unique_ptr<PlanSheet> planPicture(const PlanSheetJob& job);

} // namespace ui::print
