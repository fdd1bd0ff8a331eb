#include "ui/print/worksheet_output.h"

#include "ui/print/font_measure.h"
#include "ui/print/measures.h"
#include "ui/print/pages_file.h"

#include <QCoreApplication>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>

namespace ui::print {

namespace {

struct WorksheetOutput {
    Q_DECLARE_TR_FUNCTIONS(WorksheetOutput)
};

std::vector<core::report::Page> pagesOf(const core::Snapshot& s, const core::rules::Plan& plan, core::YardIx yard,
                                        const core::report::WorksheetOptions& options) {
    requireFonts();
    return core::report::worksheetPages(s, plan, yard, options, FontMeasure());
}

/// The printer's whole sheet: half a sheet is printed on its upper half.
QPageLayout paperFor(const WorksheetJob& job) {
    core::report::Page page = pagesOf(job.s, job.plan, job.yard, job.options).front();
    if (job.options.sheet == core::report::Sheet::Card && !job.options.large) page.height *= 2;
    return layoutFor(page);
}

} // namespace

WorksheetPages::WorksheetPages(const core::Snapshot& s, const core::rules::Plan& plan, core::YardIx yard,
                               const core::report::WorksheetOptions& options,
                               const std::vector<core::FixedThing>& fixed)
    : m_pages(pagesOf(s, plan, yard, options)), m_yard(s, plan, yard, options.language, fixed) {}

void WorksheetPages::paintAll(QPagedPaintDevice& device, double dotsPerMm) const {
    paintPages(device, m_pages, &m_yard, dotsPerMm);
}

void writePdf(const WorksheetPages& pages, const QString& title, const QString& file) {
    writePages(pages.pages(), &pages.yard(), title, file);
}

void printOn(QPrinter& printer, const WorksheetJob& job) {
    core::report::WorksheetOptions options = job.options;
    options.paper = paperOf(printer.pageLayout());
    printer.setFullPage(true);
    WorksheetPages(job.s, job.plan, job.yard, options, job.fixed).paintAll(printer, printer.resolution() / kMmPerInch);
}

bool previewWorksheet(QWidget* parent, const WorksheetJob& job) {
    requireFonts();
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageLayout(paperFor(job));
    QPrintPreviewDialog dialog(&printer, parent);
    const bool visits = core::report::forVisits(job.options.sheet);
    dialog.setWindowTitle((visits ? WorksheetOutput::tr("Sheets for visits, %1") : WorksheetOutput::tr("Worksheet, %1"))
                              .arg(job.s.yard(job.yard).name));
    QObject::connect(&dialog, &QPrintPreviewDialog::paintRequested, &dialog,
                     [&job](QPrinter* on) { printOn(*on, job); });
    dialog.resize(900, 1000);
    return dialog.exec() == QDialog::Accepted; // it closes so once it has printed
}

bool printWorksheet(QWidget* parent, const WorksheetJob& job) {
    requireFonts();
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageLayout(paperFor(job));
    QPrintDialog dialog(&printer, parent);
    if (dialog.exec() != QDialog::Accepted) return false;
    printOn(printer, job);
    return true;
}

} // namespace ui::print
