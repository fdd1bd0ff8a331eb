#include "ui/window/find_commands.h"

#include "ui/find/notes_page.h"
#include "ui/look/paged.h"
#include "ui/window/main_window.h"
#include "ui/window/wiring.h"
#include "ui/window/work_page.h"

#include <QAction>
#include <QLineEdit>
#include <QMenu>

namespace ui::window {

FindCommands::FindCommands(QMenu* edit, QWidget* window) : QObject(window) {
    notes = edit->addAction(tr("Search &notes"));
    notes->setShortcut(QKeySequence(QStringLiteral("F3")));
    notes->setStatusTip(tr("Words in the notes of all records, as they are typed"));
    window->addAction(notes);
}

void FindCommands::setBookOpen(bool open) { notes->setEnabled(open); }

void FindCommands::wire(MainWindow& window) {
    onPage(window, notes, [&window](WorkPage& page) {
        auto* search = page.findChild<find::NotesPage*>();
        auto* pages = qobject_cast<look::Paged*>(page.middleOf(Place::Colonies));
        if (!search || !pages) return;
        window.setPlace(Place::Colonies);
        pages->show(search);
        search->line()->setFocus(Qt::ShortcutFocusReason);
        search->line()->selectAll();
    });
}

} // namespace ui::window
