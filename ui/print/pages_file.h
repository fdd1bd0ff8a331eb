#pragma once

#include "core/base/progress.h"
#include "core/report/page.h"
#include "core/report/worksheet.h"

#include <QPageLayout>
#include <QString>

#include <vector>

class QPagedPaintDevice;

namespace ui::print {

class YardPicture;

/// Of the page's size, upright or across, without margins: pages have their own.
QPageLayout layoutFor(const core::report::Page& page);
/// Letter where one of its sides is Letter's, else A4.
core::report::Paper paperOf(const QPageLayout& layout);

/// Each page on one of the device's; `yard` as in paintPage.
/// Throws Stopped between two of them.
void paintPages(QPagedPaintDevice& device, const std::vector<core::report::Page>& pages, const YardPicture* yard,
                double dotsPerMm, const core::Progress& progress = {});

/// Pages of one size. Writes the PDF beside `file` and renames it when whole; an existing file is replaced. Throws
/// Error(Book) where it cannot be written, Stopped; then nothing is there that was not.
void writePages(const std::vector<core::report::Page>& pages, const YardPicture* yard, const QString& title,
                const QString& file, const core::Progress& progress = {});

} // namespace ui::print
