#include "ui/window/time_commands.h"

#include "ui/time/time_desk.h"
#include "ui/window/main_window.h"
#include "ui/window/wiring.h"
#include "ui/window/work_page.h"

#include <QAction>
#include <QMenu>

namespace ui::window {

TimeCommands::TimeCommands(QMenu* view, QWidget* window) : QObject(window) {
    const auto add = [&](const QString& text, const char* keys, const QString& tip) {
        QAction* action = view->addAction(text);
        action->setShortcut(QKeySequence(QLatin1StringView(keys)));
        action->setStatusTip(tip);
        window->addAction(action);
        return action;
    };
    goToDay = add(tr("Go to a &day…"), "Ctrl+D", tr("Type the day on which the yard is shown"));
    today = add(tr("Toda&y"), "F8", tr("Back to the yard as it stands now"));
    play = add(tr("Pl&ay the days"), "F7", tr("Day by day through what the date bar shows; the same again stops"));
}

void TimeCommands::setBookOpen(bool open) {
    for (QAction* a : {goToDay, today, play}) a->setEnabled(open);
}

void TimeCommands::wire(MainWindow& window) {
    onPage(window, goToDay, [](WorkPage& p) { p.time()->focusField(); });
    onPage(window, today, [](WorkPage& p) { p.time()->today(); });
    onPage(window, play, [](WorkPage& p) { p.time()->play(); });
}

} // namespace ui::window
