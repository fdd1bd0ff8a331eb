#pragma once

#include "core/report/page.h"
#include "core/report/worksheet.h"

#include <QPageLayout>
#include <QString>

#include <vector>

class QPagedPaintDevice;

namespace ui::print {

class YardPicture;

/// Upright, without margins: pages have their own.
QPageLayout layoutFor(core::report::Paper paper);

/// Each page on one of the device's; `yard` as in paintPage.
void paintPages(QPagedPaintDevice& device, const std::vector<core::report::Page>& pages, const YardPicture* yard,
                double dotsPerMm);

/// Writes the PDF beside `file` and renames it when whole; an existing file is replaced. Throws Error(Book) where it
/// cannot be written; then nothing is there that was not.
void writePages(const std::vector<core::report::Page>& pages, const YardPicture* yard, const QString& title,
                core::report::Paper paper, const QString& file);

} // namespace ui::print
