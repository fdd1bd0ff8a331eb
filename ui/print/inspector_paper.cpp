#include "ui/print/inspector_paper.h"

#include "core/exchange/table_folder.h"
#include "ui/print/font_measure.h"
#include "ui/print/pages_file.h"

namespace ui::print {

namespace report = core::report;
namespace rules = core::rules;

std::vector<report::Page> inspectorPages(const rules::InspectionBook& book, const rules::Inspection& found,
                                         const report::PageOrigin& origin) {
    requireFonts();
    return report::inspectorPages(book, found, origin, FontMeasure());
}

void writeInspectorPdf(const rules::InspectionBook& book, const rules::Inspection& found,
                       const report::PageOrigin& origin, const QString& file) {
    writePages(inspectorPages(book, found, origin), nullptr, report::inspectorTitle(), file);
}

void writeInspectorFolder(const rules::InspectionBook& book, const rules::Inspection& found,
                          const report::PageOrigin& origin, const QString& dir) {
    std::vector<core::exchange::TableFile> files;
    for (const report::PaperTable& table : report::inspectorTables(book, found, origin)) {
        const bool own = !table.fileColumns.empty();
        QStringList head;
        for (const report::TableColumn& column : own ? table.fileColumns : table.columns) head << column.file;
        files.push_back({table.file, head, own ? table.fileRows : table.rows});
    }
    core::exchange::writeTables(dir, files);
}

} // namespace ui::print
