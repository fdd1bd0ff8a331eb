#include "ui/window/import_folder.h"

#include "core/base/error.h"
#include "core/exchange/import.h"
#include "ui/busy/panel.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

namespace ui::window {

namespace {
struct Folder {
    Q_DECLARE_TR_FUNCTIONS(Folder)
};
} // namespace

ImportedFolder importFolderInto(core::edit::Session& session, const QString& folder, QWidget& window) {
    core::exchange::ImportFiles files;
    for (const core::exchange::FileKind kind : core::exchange::kReadKinds) {
        const QString path = QDir(folder).filePath(core::exchange::fileName(kind));
        if (QFileInfo::exists(path)) files.files.push_back({kind, path});
    }
    ImportedFolder out;
    if (files.files.empty()) {
        out.faults << Folder::tr(
                          "%1 holds none of the files yards.csv, colonies.csv, visits.csv, transfers.csv, "
                          "results.csv, treatments.csv, lineage.csv, placements.csv, box_kinds.csv, settings.csv.")
                          .arg(folder);
        return out;
    }
    busy::Panel panel(Folder::tr("The files are read into the book…"), window);
    files.progress = panel.busy().progress();
    const core::exchange::ImportReport report = core::exchange::importFiles(session, files, false);
    out.faults = report.faults.lines();
    out.changed = report.line.has_value();
    out.stopped = report.stopped;
    out.summary = report.line ? report.summary().join(QStringLiteral("; "))
                              : Folder::tr("The book has all of it already; nothing was changed.");
    return out;
}

} // namespace ui::window
