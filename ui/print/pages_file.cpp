#include "ui/print/pages_file.h"

#include "ui/print/measures.h"
#include "ui/print/paint_page.h"
#include "ui/print/save_file.h"

#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>
#include <cmath>

namespace ui::print {

using core::report::Paper;

namespace {
struct PagesFile {
    Q_DECLARE_TR_FUNCTIONS(PagesFile)
};
} // namespace

QPageLayout layoutFor(const core::report::Page& page) {
    const bool across = page.width > page.height;
    const QSizeF upright(std::min(page.width, page.height), std::max(page.width, page.height));
    return QPageLayout(QPageSize(upright, QPageSize::Millimeter, {}, QPageSize::FuzzyMatch),
                       across ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF(0, 0, 0, 0));
}

Paper paperOf(const QPageLayout& layout) {
    constexpr double kLetterWide = 215.9;
    const QSizeF size = layout.pageSize().size(QPageSize::Millimeter);
    const bool letter = std::abs(size.width() - kLetterWide) < 1 || std::abs(size.height() - kLetterWide) < 1;
    return letter ? Paper::Letter : Paper::A4;
}

void paintPages(QPagedPaintDevice& device, const std::vector<core::report::Page>& pages, const YardPicture* yard,
                double dotsPerMm, const core::Progress& progress) {
    QPainter p(&device);
    for (size_t i = 0; i < pages.size(); ++i) {
        progress.at(static_cast<qint64>(i), static_cast<qint64>(pages.size()));
        if (i > 0) device.newPage();
        paintPage(p, pages[i], dotsPerMm, yard);
    }
}

void writePages(const std::vector<core::report::Page>& pages, const YardPicture* yard, const QString& title,
                const QString& file, const core::Progress& progress) {
    writeFile(file, [&](QIODevice& out) {
        QPdfWriter pdf(&out);
        pdf.setPageLayout(layoutFor(pages.front()));
        pdf.setResolution(kPdfDpi);
        pdf.setTitle(title);
        pdf.setCreator(QStringLiteral("Yardwright"));
        paintPages(pdf, pages, yard, kPdfDpi / kMmPerInch, progress.part(0, 1, PagesFile::tr("Writing the pages")));
        return true;
    });
}

} // namespace ui::print
