#include "ui/window/export_commands.h"

#include "core/exchange/export.h"
#include "core/exchange/for_spreadsheets.h"
#include "ui/busy/run.h"
#include "ui/window/main_window.h"

#include <QAction>
#include <QMenu>

namespace ui::window {

namespace {

using core::edit::Session;
using Export = void (*)(const Session&, const QString& dir, const core::Progress&);

/// Into a folder that is named as the file asked for.
void exportTo(MainWindow& window, Dialogs& dialogs, Export how) {
    if (!window.desk()) return;
    const Session& session = window.desk()->session();
    session.needOwnFile();
    auto folder = dialogs.fileToWrite(ExportCommands::tr("Book as CSV files: name of their folder"),
                                      ExportCommands::tr("%1, export.csv").arg(session.bookTitle()));
    if (!folder) return;
    if (folder->endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive)) folder->chop(4);
    const auto work = [how, folder = *folder, book = session.path(),
                       &clock = session.clock()](const core::Progress& progress) {
        how(*Session::open(book, clock, Session::Access::ReadOnly), folder, progress);
    };
    const bool done = busy::run(window, ExportCommands::tr("The book is written as CSV files…"), work);
    window.say(done ? ExportCommands::tr("The book's files are in the folder %1.").arg(*folder)
                    : ExportCommands::tr("Stopped: no file was written."));
}

} // namespace

ExportCommands::ExportCommands(QMenu* book, QWidget* window) : QObject(window) {
    csv = book->addAction(tr("&Export as CSV files…"));
    csv->setShortcut(QKeySequence(QStringLiteral("Ctrl+Alt+E")));
    csv->setStatusTip(tr("All that the book holds, a file a kind of record, in a folder; they can be read in again"));
    spreadsheets = book->addAction(tr("CSV files for a spreads&heet…"));
    spreadsheets->setStatusTip(tr("The same for looking at: no cell of them is taken for a formula"));
    for (QAction* a : {csv, spreadsheets}) window->addAction(a);
}

void ExportCommands::setBookOpen(bool open) {
    for (QAction* a : {csv, spreadsheets}) a->setEnabled(open);
}

void ExportCommands::wire(MainWindow& window, Dialogs& dialogs) {
    const auto connectTo = [&](QAction* action, Export how) {
        connect(action, &QAction::triggered, &window,
                [&window, &dialogs, how] { guarded(dialogs, [&] { exportTo(window, dialogs, how); }); });
    };
    connectTo(csv, core::exchange::exportBook);
    connectTo(spreadsheets, core::exchange::exportForSpreadsheets);
}

} // namespace ui::window
