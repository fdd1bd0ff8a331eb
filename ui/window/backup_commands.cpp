#include "ui/window/backup_commands.h"

#include "ui/backup/backups_window.h"
#include "ui/backup/keeping.h"
#include "ui/backup/where.h"
#include "ui/busy/run.h"
#include "ui/copies/known.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <QAction>
#include <QFileInfo>
#include <QMenu>

namespace ui::window {

namespace {

void putInPlace(MainWindow& window, const core::edit::Backup& made, const std::optional<core::edit::PutBack>& why) {
    const QString aside = backup::asideOf(window.desk()->session().path(), window.desk()->session().clock().nowUtc());
    bool whole = false;
    const bool done = window.replaceBook([&](const QString& book) {
        whole = busy::run(
            window, BackupCommands::tr("The backup is put in the book's place…"),
            [&](const core::Progress& progress) { core::edit::putInPlace(made.path, book, aside, progress, why); });
    });
    if (done && !whole) window.say(BackupCommands::tr("Stopped: the book is as it was."));
    if (!done || !whole) return;
    copies::knowFile(window.desk()->session().bookId(), QFileInfo(aside).fileName());
    QString said = BackupCommands::tr("The backup is the book now. The book of before is kept as %1.")
                       .arg(QFileInfo(aside).fileName());
    if (why) said += u' ' + BackupCommands::tr("Its history says which holds went, why, and who did it.");
    window.say(said);
}

} // namespace

BackupCommands::BackupCommands(QMenu* book, QWidget* window) : QObject(window) {
    show = book->addAction(tr("Bac&kups…"));
    show->setShortcut(QKeySequence(QStringLiteral("Ctrl+Alt+U")));
    show->setStatusTip(tr("Copies of the book: where they lie, what they lack, and how one takes its place"));
    window->addAction(show);
}

void BackupCommands::setBookOpen(bool open) { show->setEnabled(open); }

void BackupCommands::wire(MainWindow& window, Dialogs& dialogs) {
    connect(show, &QAction::triggered, &window,
            [this, &window, &dialogs] { guarded(dialogs, [&] { open(window, dialogs); }); });
    connect(&window, &MainWindow::bookOpened, this, [this, &window] { begin(window); });
    connect(&window, &MainWindow::bookLeaving, this, [this] {
        if (m_keeping && m_byItself) m_keeping->finish();
        delete m_keeping;
        m_keeping = nullptr;
    });
}

void BackupCommands::begin(MainWindow& window) {
    delete m_keeping;
    m_keeping = new backup::Keeping(*window.desk(), this);
    if (!m_byItself || window.desk()->session().readOnly()) m_keeping->waitForAsking();
    connect(m_keeping, &backup::Keeping::failed, &window, &MainWindow::say);
}

void BackupCommands::open(MainWindow& window, Dialogs& dialogs) {
    if (!m_keeping) return;
    auto* shown = window.page()->findChild<backup::BackupsWindow*>();
    if (!shown) {
        shown = new backup::BackupsWindow(*window.desk(), *m_keeping, dialogs, window.page());
        // Its own window goes with the book that is replaced: after the press of its button.
        connect(
            shown, &backup::BackupsWindow::placeAsked, &window,
            [&window](const core::edit::Backup& backup, const std::optional<core::edit::PutBack>& why) {
                putInPlace(window, backup, why);
            },
            Qt::QueuedConnection);
    }
    shown->show();
    shown->raise();
    shown->activateWindow();
}

} // namespace ui::window
