#include "ui/print/pages_file.h"

#include "ui/print/measures.h"
#include "ui/print/paint_page.h"
#include "ui/print/save_file.h"

#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace ui::print {

using core::report::Paper;

QPageLayout layoutFor(Paper paper) {
    return QPageLayout(QPageSize(paper == Paper::Letter ? QPageSize::Letter : QPageSize::A4), QPageLayout::Portrait,
                       QMarginsF(0, 0, 0, 0));
}

void paintPages(QPagedPaintDevice& device, const std::vector<core::report::Page>& pages, const YardPicture* yard,
                double dotsPerMm) {
    QPainter p(&device);
    for (size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) device.newPage();
        paintPage(p, pages[i], dotsPerMm, yard);
    }
}

void writePages(const std::vector<core::report::Page>& pages, const YardPicture* yard, const QString& title,
                Paper paper, const QString& file) {
    writeFile(file, [&](QSaveFile& out) {
        QPdfWriter pdf(&out);
        pdf.setPageLayout(layoutFor(paper));
        pdf.setResolution(kPdfDpi);
        pdf.setTitle(title);
        pdf.setCreator(QStringLiteral("Yardwright"));
        paintPages(pdf, pages, yard, kPdfDpi / kMmPerInch);
        return true;
    });
}

} // namespace ui::print
