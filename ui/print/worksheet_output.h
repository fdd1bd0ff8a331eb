#pragma once

#include "core/model/rows.h"
#include "core/report/worksheet.h"
#include "ui/print/yard_picture.h"

#include <QString>

#include <vector>

class QPainter;
class QPagedPaintDevice;
class QPrinter;
class QWidget;

namespace ui::print {

/// A worksheet that is ready to be painted, the same everywhere. Throws Error(Internal) where no fonts are installed.
class WorksheetPages {
public:
    WorksheetPages(const core::Snapshot& s, const core::rules::Plan& plan, core::YardIx yard,
                   const core::report::WorksheetOptions& options, const std::vector<core::FixedThing>& fixed = {});

    const std::vector<core::report::Page>& pages() const { return m_pages; }
    const YardPicture& yard() const { return m_yard; }
    /// All pages, each on one of the device's.
    void paintAll(QPagedPaintDevice& device, double dotsPerMm) const;

private:
    std::vector<core::report::Page> m_pages;
    YardPicture m_yard;
};

/// Writes the PDF beside `file` and renames it when whole; an existing file is replaced. Throws Error(Book) where it
/// cannot be written; then nothing is there that was not.
void writePdf(const WorksheetPages& pages, const QString& title, const QString& file);

/// What a worksheet is made of, for paper whose size only the printer knows.
struct WorksheetJob {
    const core::Snapshot& s;
    const core::rules::Plan& plan;
    core::YardIx yard;
    core::report::WorksheetOptions options;
    std::vector<core::FixedThing> fixed; ///< of the yard
};

/// A preview on the screen; returns when it is closed. True: it was printed from there.
bool previewWorksheet(QWidget* parent, const WorksheetJob& job);
/// Asks for the printer, and prints unless that is cancelled: then false.
bool printWorksheet(QWidget* parent, const WorksheetJob& job);
/// On the printer's paper: Letter where it has that, else A4.
void printOn(QPrinter& printer, const WorksheetJob& job);

} // namespace ui::print
