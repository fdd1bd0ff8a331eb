#pragma once

#include "core/base/id.h"
#include "core/report/sheet.h"
#include "ui/dialogs.h"

#include <optional>
#include <vector>

namespace ui::window {

class MainWindow;

enum class PaperWay { Preview, Print, Pdf };

/// A sheet of the shown yard to paper, by the window's ways, after the question how (Dialogs::paperToUse; `sheet` is
/// proposed, else that of the step shown: what is missing, the worksheet, the checks due; merge day is shown meanwhile,
/// but for the sheets of visits, a card of the chosen hive); says where a PDF went. A worksheet that was printed or
/// written as PDF is recorded with its merge day (core/edit/print_day.h); a preview alone is not, nor is a sheet of a
/// past day, of a book that is only read, or of a day that has begun to be written back.
void toPaper(MainWindow& window, Dialogs& dialogs, PaperWay way, std::optional<core::report::Sheet> sheet = {});
/// The tally sheet of these hives alone, in this order; they stand in the yard shown.
void roundToPaper(MainWindow& window, Dialogs& dialogs, PaperWay way, const std::vector<core::ColonyId>& round);

} // namespace ui::window
