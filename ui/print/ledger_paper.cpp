#include "ui/print/ledger_paper.h"

#include "core/base/error.h"
#include "ui/print/font_measure.h"
#include "ui/print/paint_page.h"
#include "ui/print/worksheet_paper.h"

#include <QCoreApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace ui::print {

namespace {

struct LedgerPaper {
    Q_DECLARE_TR_FUNCTIONS(LedgerPaper)
};

constexpr int kLedgerDpi = 600;

core::Error unwritten(const QSaveFile& out) {
    return core::Error(core::Error::Kind::Book,
                       LedgerPaper::tr("%1 cannot be written: %2.").arg(out.fileName(), out.errorString()));
}

} // namespace

void writeLedgerPdf(const core::Snapshot& s, const std::vector<core::rules::LedgerYear>& years,
                    core::report::LedgerOptions options, const QString& file) {
    requireFonts();
    options.paper = usualPaper();
    const auto pages = core::report::ledgerPages(s, years, options, FontMeasure());
    QSaveFile out(file);
    if (!out.open(QIODevice::WriteOnly)) throw unwritten(out);
    {
        QPdfWriter pdf(&out);
        const bool letter = options.paper == core::report::Paper::Letter;
        pdf.setPageLayout(QPageLayout(QPageSize(letter ? QPageSize::Letter : QPageSize::A4), QPageLayout::Portrait,
                                      QMarginsF(0, 0, 0, 0)));
        pdf.setResolution(kLedgerDpi);
        pdf.setTitle(LedgerPaper::tr("Ledger of colonies"));
        pdf.setCreator(QStringLiteral("Yardwright"));
        QPainter p(&pdf);
        for (size_t i = 0; i < pages.size(); ++i) {
            if (i > 0) pdf.newPage();
            paintPage(p, pages[i], kLedgerDpi / 25.4, nullptr);
        }
    }
    if (!out.commit()) throw unwritten(out);
}

} // namespace ui::print
