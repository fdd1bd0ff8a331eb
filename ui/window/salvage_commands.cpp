#include "ui/window/salvage_commands.h"

#include "ui/backup/where.h"
#include "ui/busy/run.h"
#include "ui/salvage/salvage_window.h"
#include "ui/window/main_window.h"

#include <QAction>
#include <QFileInfo>
#include <QMenu>
#include <QTimer>

namespace ui::window {

SalvageCommands::SalvageCommands(QMenu* book, QWidget* window) : QObject(window) {
    show = book->addAction(tr("Salva&ge a damaged book…"));
    show->setShortcut(QKeySequence(QStringLiteral("Ctrl+Alt+R")));
    show->setStatusTip(tr("What can be read of a damaged book, put into a new one; what is missing is said"));
    window->addAction(show);
}

void SalvageCommands::wire(MainWindow& window, Dialogs& dialogs) {
    connect(show, &QAction::triggered, &window, [this, &window, &dialogs] {
        if (const auto path = dialogs.bookToOpen()) open(window, dialogs, *path, {});
    });
    connect(
        &window, &MainWindow::bookDamaged, this,
        [this, &window, &dialogs](const QString& path, const QString& wrong) { open(window, dialogs, path, wrong); });
}

void SalvageCommands::open(MainWindow& window, Dialogs& dialogs, const QString& path, const QString& wrong) {
    delete window.findChild<salvage::SalvageWindow*>();
    auto* shown = new salvage::SalvageWindow(path, wrong, window.clock(), dialogs, &window);
    shown->setAttribute(Qt::WA_DeleteOnClose);
    // After the press of its button: it closes.
    connect(
        shown, &salvage::SalvageWindow::placeAsked, &window,
        [&window, &dialogs, shown](const QString& book, const core::edit::Backup& backup,
                                   const std::optional<core::edit::PutBack>& why) {
            const QString aside = backup::asideOf(book, window.clock().nowUtc());
            bool placed = false;
            guarded(dialogs, [&] {
                placed = busy::run(*shown, tr("The backup is put in the book's place…"),
                                   [&](const core::Progress& progress) {
                                       core::edit::putInPlace(backup.path, book, aside, progress, why);
                                   });
            });
            if (!placed || !window.openBook(book)) return;
            window.say(
                tr("The backup is the book now. The damaged one is kept as %1.").arg(QFileInfo(aside).fileName()));
            shown->close();
        },
        Qt::QueuedConnection);
    connect(
        shown, &salvage::SalvageWindow::bookMade, &window,
        [&window, shown](const QString& book, const QString& account) {
            if (!window.openBook(book)) return;
            window.say(tr("This is what could be read. What is missing stands in %1, beside it.")
                           .arg(QFileInfo(account).fileName()));
            shown->close();
        },
        Qt::QueuedConnection);
    shown->show();
    shown->raise();
    shown->activateWindow();
    QTimer::singleShot(0, shown, &salvage::SalvageWindow::read); // once it is painted
}

} // namespace ui::window
