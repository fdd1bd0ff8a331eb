#pragma once

#include "core/report/worksheet.h"

namespace ui::print {

/// How a sheet is to be printed. A matter of the print, not of the book: crews and keepers differ in their language,
/// eyes in what they can read, printers in their paper. Kept on this machine, but for the sheet.
struct PaperChoice {
    core::report::Language language = core::report::Language::English;
    core::report::Paper paper = core::report::Paper::A4;
    bool large = false;
    core::report::Sheet sheet = core::report::Sheet::MergeDay;
    friend bool operator==(const PaperChoice&, const PaperChoice&) = default;
};

/// A4 where metres are used, else Letter.
core::report::Paper usualPaper();
/// As it was last chosen on this machine; before that by the system's language and paper.
PaperChoice lastPaperChoice();
void rememberPaperChoice(const PaperChoice& choice);

} // namespace ui::print
