#include "ui/print/inspector_paper.h"

#include "core/exchange/table_folder.h"
#include "ui/print/font_measure.h"
#include "ui/print/pages_file.h"

#include <QCoreApplication>

namespace ui::print {

namespace report = core::report;
namespace rules = core::rules;

namespace {
struct InspectorPaper {
    Q_DECLARE_TR_FUNCTIONS(InspectorPaper)
};
} // namespace

std::vector<report::Page> inspectorPages(const rules::InspectionBook& book, const rules::Inspection& found,
                                         const report::PageOrigin& origin, const core::Progress& progress) {
    requireFonts();
    const core::Progress setting = progress.part(0, 1, InspectorPaper::tr("Setting the pages"));
    return report::inspectorPages(book, found, origin, FontMeasure(), setting);
}

void writeInspectorPdf(const rules::InspectionBook& book, const rules::Inspection& found,
                       const report::PageOrigin& origin, const QString& file, const core::Progress& progress) {
    constexpr double kSet = 0.35; // of the way, as measured on a report of 3,000 pages
    writePages(inspectorPages(book, found, origin, progress.part(0, kSet)), nullptr, report::inspectorTitle(), file,
               progress.part(kSet, 1));
}

void writeInspectorFolder(const rules::InspectionBook& book, const rules::Inspection& found,
                          const report::PageOrigin& origin, const QString& dir, const core::Progress& progress) {
    std::vector<core::exchange::TableFile> files;
    for (const report::PaperTable& table : report::inspectorTables(book, found, origin)) {
        const bool own = !table.fileColumns.empty();
        QStringList head;
        for (const report::TableColumn& column : own ? table.fileColumns : table.columns) head << column.file;
        files.push_back({table.file, head, own ? table.fileRows : table.rows});
    }
    core::exchange::writeTables(dir, files, progress.part(0, 1, InspectorPaper::tr("Writing the tables")));
}

} // namespace ui::print
