#include "ui/print/plan_output.h"

#include "ui/print/measures.h"
#include "ui/print/save_file.h"

#include "core/base/error.h"
#include "ui/print/plan_parts.h"
#include "ui/print/plan_words.h"

#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QPrintDialog>
#include <QPrinter>
#include <QSvgGenerator>

#include <cmath>
#include <functional>

namespace ui::print {

namespace {

constexpr int kPngDpi = 300;
constexpr int kSvgPerMm = 10;

using Sheets = std::vector<std::unique_ptr<PlanSheet>>;

void paintAll(QPagedPaintDevice& device, const Sheets& sheets, double dotsPerMm) {
    QPainter p(&device);
    bool first = true;
    for (const auto& sheet : sheets)
        for (int page = 0; page < sheet->pages(); ++page) {
            if (!first) {
                device.setPageOrientation(sheet->pageLayout().orientation());
                device.newPage();
            }
            first = false;
            p.save();
            p.scale(dotsPerMm, dotsPerMm);
            sheet->paint(p, page);
            p.restore();
        }
}

QString titleOf(const PlanSheetJob& job) { return PlanWords::tr("Plan of %1").arg(job.scene.yard); }

} // namespace

void writePlanPdf(const PlanSheetJob& job, const QString& file) {
    const Sheets sheets = planSheets(job);
    writeFile(file, [&](QIODevice& out) {
        QPdfWriter pdf(&out);
        pdf.setPageLayout(sheets.front()->pageLayout());
        pdf.setResolution(kPdfDpi);
        pdf.setTitle(titleOf(job));
        pdf.setCreator(QStringLiteral("Yardwright"));
        paintAll(pdf, sheets, kPdfDpi / kMmPerInch);
        return true;
    });
}

void writePlanSvg(const PlanSheetJob& job, const QString& file) {
    const auto sheet = planPicture(job);
    writeFile(file, [&](QIODevice& out) {
        const QSize size = (sheet->sizeMm() * kSvgPerMm).toSize();
        QSvgGenerator svg;
        svg.setOutputDevice(&out);
        svg.setResolution(static_cast<int>(std::lround(kSvgPerMm * kMmPerInch)));
        svg.setSize(size);
        svg.setViewBox(QRect(QPoint(), size));
        svg.setTitle(titleOf(job));
        QPainter p(&svg);
        p.scale(kSvgPerMm, kSvgPerMm);
        sheet->paint(p, 0);
        return p.end();
    });
}

void writePlanPng(const PlanSheetJob& job, const QString& file) {
    const auto sheet = planPicture(job);
    writeFile(file, [&](QIODevice& out) {
        constexpr double kDotsPerMm = kPngDpi / kMmPerInch;
        QImage image((sheet->sizeMm() * kDotsPerMm).toSize(), QImage::Format_RGB32);
        if (image.isNull()) return false;
        image.setDotsPerMeterX(static_cast<int>(std::lround(kDotsPerMm * 1000)));
        image.setDotsPerMeterY(static_cast<int>(std::lround(kDotsPerMm * 1000)));
        image.fill(Qt::white);
        QPainter p(&image);
        p.scale(kDotsPerMm, kDotsPerMm);
        sheet->paint(p, 0);
        p.end();
        return image.save(&out, "PNG");
    });
}

void printPlan(QWidget* parent, const PlanSheetJob& job) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageLayout(PlanSheet(job).pageLayout());
    QPrintDialog dialog(&printer, parent);
    if (dialog.exec() != QDialog::Accepted) return;
    PlanSheetJob chosen = job;
    const bool letter = printer.pageLayout().pageSize().id() == QPageSize::Letter;
    chosen.paper = letter ? core::report::Paper::Letter : core::report::Paper::A4;
    const Sheets sheets = planSheets(chosen);
    printer.setPageOrientation(sheets.front()->pageLayout().orientation());
    printer.setFullPage(true);
    paintAll(printer, sheets, printer.resolution() / kMmPerInch);
}

} // namespace ui::print
