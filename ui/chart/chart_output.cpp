#include "ui/chart/chart_output.h"

#include "core/exchange/csv_writer.h"
#include "core/report/worksheet_flow.h"
#include "ui/chart/chart_table.h"
#include "ui/chart/paint_chart.h"
#include "ui/look/type.h"
#include "ui/print/font_measure.h"
#include "ui/print/measures.h"
#include "ui/print/pages_file.h"
#include "ui/print/paper_choice.h"
#include "ui/print/save_file.h"

#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QPrintDialog>
#include <QPrinter>

#include <cmath>

namespace ui::chart {

namespace {

constexpr double kPngDpi = 300;
constexpr double kScreenDpi = 96;
constexpr double kMarginMm = 15;
constexpr QSizeF kPicture(720, 400);

/// 11 pt in pixels of a screen.
QFont paperFont() {
    QFont font = look::textFont(QFont());
    font.setPixelSize(15);
    return font;
}

/// `page` in mm; the painter counts in pixels of a screen.
void paintSheet(QPainter& p, const Chart& chart, const Sheet& sheet, const QSizeF& pageMm) {
    const double perMm = kScreenDpi / print::kMmPerInch;
    const QRectF inner = QRectF(QPointF(), pageMm * perMm)
                             .adjusted(kMarginMm * perMm, kMarginMm * perMm, -kMarginMm * perMm, -kMarginMm * perMm);
    const QFont font = paperFont();
    constexpr double kFoot = 30;
    p.save();
    p.translate(inner.topLeft());
    const look::Colours c = look::printColours();
    const QSizeF room(inner.width(), inner.height() - kFoot);
    const ChartLayout layout = layOut(chart, room, font);
    paintChart(p, chart, layout, c);
    p.setFont(layout.lesser);
    p.setPen(c.ink);
    p.drawText(QRectF(0, inner.height() - kFoot, inner.width(), kFoot), Qt::AlignLeft | Qt::AlignBottom, sheet.foot);
    p.restore();
}

QPageLayout lying(core::report::Paper paper) {
    const core::report::PageSize size = core::report::pageSize(paper);
    core::report::Page page;
    page.width = size.height;
    page.height = size.width;
    return print::layoutFor(page);
}

void paintAll(QPagedPaintDevice& device, const std::vector<Chart>& charts, const Sheet& sheet, double dpi) {
    QPainter p(&device);
    const QSizeF page = device.pageLayout().fullRect(QPageLayout::Millimeter).size();
    for (size_t i = 0; i < charts.size(); ++i) {
        if (i > 0) device.newPage();
        p.save();
        p.scale(dpi / kScreenDpi, dpi / kScreenDpi);
        paintSheet(p, charts[i], sheet, page);
        p.restore();
    }
}

} // namespace

void writeChartPdf(const std::vector<Chart>& charts, const Sheet& sheet, const QString& file) {
    print::requireFonts();
    print::writeFile(file, [&](QIODevice& out) {
        QPdfWriter pdf(&out);
        pdf.setPageLayout(lying(print::usualPaper()));
        pdf.setResolution(print::kPdfDpi);
        pdf.setTitle(charts.empty() ? QString() : charts.front().title);
        pdf.setCreator(QStringLiteral("Yardwright"));
        paintAll(pdf, charts, sheet, print::kPdfDpi);
        return true;
    });
}

void writeChartPng(const Chart& chart, const QString& file) {
    print::requireFonts();
    print::writeFile(file, [&](QIODevice& out) {
        constexpr double kScale = kPngDpi / kScreenDpi, kRim = 16;
        QImage image(((kPicture + QSizeF(2 * kRim, 2 * kRim)) * kScale).toSize(), QImage::Format_RGB32);
        image.setDotsPerMeterX(static_cast<int>(std::lround(kPngDpi / print::kMmPerInch * 1000)));
        image.setDotsPerMeterY(image.dotsPerMeterX());
        image.fill(Qt::white);
        QPainter p(&image);
        p.scale(kScale, kScale);
        p.translate(kRim, kRim);
        paintChart(p, chart, layOut(chart, kPicture, paperFont()), look::printColours());
        p.end();
        return image.save(&out, "PNG");
    });
}

void writeChartCsv(const Chart& chart, const QString& file) {
    const QFileInfo info(file);
    core::exchange::CsvWriter writer(info.absolutePath(), info.fileName());
    const ChartTable table = tableOf(chart, TableFor::File);
    writer.row(table.columns);
    for (const QStringList& row : table.rows) writer.row(row);
    writer.commit();
}

void printCharts(QWidget* parent, const std::vector<Chart>& charts, const Sheet& sheet) {
    print::requireFonts();
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageLayout(lying(print::usualPaper()));
    QPrintDialog dialog(&printer, parent);
    if (dialog.exec() != QDialog::Accepted) return;
    printer.setFullPage(true);
    paintAll(printer, charts, sheet, printer.resolution());
}

} // namespace ui::chart
