#include "ui/print/ledger_paper.h"

#include "ui/print/font_measure.h"
#include "ui/print/pages_file.h"

#include <QCoreApplication>

namespace ui::print {

namespace {

struct LedgerPaper {
    Q_DECLARE_TR_FUNCTIONS(LedgerPaper)
};

} // namespace

void writeLedgerPdf(const core::Snapshot& s, const std::vector<core::rules::LedgerYear>& years,
                    const core::report::PageOrigin& origin, const QString& file) {
    requireFonts();
    const auto pages = core::report::ledgerPages(s, years, origin, FontMeasure());
    writePages(pages, nullptr, LedgerPaper::tr("Ledger of colonies"), file);
}

} // namespace ui::print
