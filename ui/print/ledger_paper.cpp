#include "ui/print/ledger_paper.h"

#include "ui/print/font_measure.h"
#include "ui/print/pages_file.h"
#include "ui/print/worksheet_paper.h"

#include <QCoreApplication>

namespace ui::print {

namespace {

struct LedgerPaper {
    Q_DECLARE_TR_FUNCTIONS(LedgerPaper)
};

} // namespace

void writeLedgerPdf(const core::Snapshot& s, const std::vector<core::rules::LedgerYear>& years,
                    core::report::LedgerOptions options, const QString& file) {
    requireFonts();
    options.paper = usualPaper();
    const auto pages = core::report::ledgerPages(s, years, options, FontMeasure());
    writePages(pages, nullptr, LedgerPaper::tr("Ledger of colonies"), file);
}

} // namespace ui::print
