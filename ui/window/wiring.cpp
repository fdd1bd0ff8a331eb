#include "ui/window/wiring.h"

#include "ui/exchange/import_window.h"
#include "ui/history/history_window.h"
#include "ui/look/text_size.h"
#include "ui/merge/merge_place.h"
#include "ui/people/keeper_page.h"
#include "ui/people/people_page.h"
#include "ui/plan/plan_view.h"
#include "ui/settings/box_kinds_page.h"
#include "ui/settings/phrases_page.h"
#include "ui/settings/settings_dialog.h"
#include "ui/table/hive_table.h"
#include "ui/window/backup_commands.h"
#include "ui/window/commands.h"
#include "ui/window/copy_commands.h"
#include "ui/window/export_commands.h"
#include "ui/window/find_commands.h"
#include "ui/window/notice_place.h"
#include "ui/window/pick_commands.h"
#include "ui/window/plan_menu.h"
#include "ui/window/plan_paper.h"
#include "ui/window/read_banner.h"
#include "ui/window/remembered.h"
#include "ui/window/salvage_commands.h"
#include "ui/window/status_line.h"
#include "ui/window/time_commands.h"
#include "ui/window/to_paper.h"
#include "ui/window/visit_paper.h"
#include "ui/window/welcome.h"
#include "ui/window/work_page.h"
#include "ui/window/yard_commands.h"

#include <QMenu>

namespace ui::window {

namespace {

/// Beside the window; one for each book on the desk.
void showSettings(MainWindow& w, Dialogs& dialogs, bool people) {
    guarded(dialogs, [&] {
        if (!w.desk()) return;
        auto* dialog = w.findChild<settings::SettingsDialog*>();
        if (!dialog) {
            dialog = new settings::SettingsDialog(*w.desk(), dialogs, &w);
            dialog->addPage(QObject::tr("Box kinds"), new settings::BoxKindsPage(*w.desk(), dialog));
            dialog->addPage(QObject::tr("Quick sentences"), new settings::PhrasesPage(*w.desk(), dialog));
            dialog->addPage(QObject::tr("Keeper"), new people::KeeperPage(*w.desk(), dialog));
            dialog->addPage(QObject::tr("People"), new people::PeoplePage(*w.desk(), dialog));
        }
        if (people) dialog->showPage(dialog->findChild<people::PeoplePage*>());
        dialog->show();
        dialog->raise();
        dialog->activateWindow();
    });
}

void wireBook(MainWindow& w, Commands& c, Dialogs& dialogs) {
    QObject::connect(c.makeBook, &QAction::triggered, &w, [&w, &dialogs] {
        if (const auto path = dialogs.bookToMake()) w.makeBook(*path);
    });
    QObject::connect(c.openBook, &QAction::triggered, &w, [&w, &dialogs] {
        if (const auto path = dialogs.bookToOpen()) w.openBook(*path);
    });
    QObject::connect(c.importCsv, &QAction::triggered, &w, [&w, &dialogs] {
        if (const auto folder = dialogs.folderOfCsv()) w.importFolder(*folder);
    });
    onPage(w, c.readFile,
           [&w, &dialogs](WorkPage& p) { guarded(dialogs, [&] { exchange::showImport(*w.desk(), dialogs, &p); }); });
    QObject::connect(&c, &Commands::recentAsked, &w, [&w](const QString& path) { w.openBook(path); });
    QObject::connect(c.settings, &QAction::triggered, &w, [&w, &dialogs] { showSettings(w, dialogs, false); });
    QObject::connect(c.people, &QAction::triggered, &w, [&w, &dialogs] { showSettings(w, dialogs, true); });
    QObject::connect(&c, &Commands::authorAsked, &w,
                     [&w, &dialogs](const QString& name) { guarded(dialogs, [&] { w.writeAs(name); }); });
    QObject::connect(c.close, &QAction::triggered, &w, &QWidget::close);
    QObject::connect(c.tryAgain, &QAction::triggered, &w, &MainWindow::tryAgain);
    QObject::connect(w.banner(), &ReadBanner::tryAgainAsked, &w, &MainWindow::tryAgain);
    const std::pair<QAction*, PaperWay> ways[] = {
        {c.preview, PaperWay::Preview}, {c.print, PaperWay::Print}, {c.pdf, PaperWay::Pdf}};
    for (const auto& [command, way] : ways)
        onPage(w, command, [&w, &dialogs, to = way](WorkPage&) { toPaper(w, dialogs, to); });
}

void wireEdit(MainWindow& w, Commands& c) {
    QObject::connect(c.undo, &QAction::triggered, &w, &MainWindow::undo);
    QObject::connect(c.redo, &QAction::triggered, &w, &MainWindow::redo);
    onPage(w, c.findColony, [](WorkPage& p) { p.findColony(); });
    onPage(w, c.logVisit, [](WorkPage& p) { p.logVisit(); });
    for (const auto& [what, action] : c.notes) onPage(w, action, [what = what](WorkPage& p) { p.note(what); });
}

void wireView(MainWindow& w, Commands& c, Dialogs& dialogs) {
    QObject::connect(c.yardPlan, &QAction::triggered, &w, [&w] { w.setPlace(Place::YardPlan); });
    QObject::connect(c.mergeDay, &QAction::triggered, &w, [&w] { w.setPlace(Place::MergeDay); });
    QObject::connect(c.colonies, &QAction::triggered, &w, [&w] { w.setPlace(Place::Colonies); });
    QObject::connect(c.visits, &QAction::triggered, &w, [&w] { w.setPlace(Place::Visits); });
    QObject::connect(c.health, &QAction::triggered, &w, [&w] { w.setPlace(Place::Health); });
    QObject::connect(c.season, &QAction::triggered, &w, [&w] { w.setPlace(Place::Season); });
    onPage(w, c.zoomIn, [](WorkPage& p) { p.plan()->zoomIn(); });
    onPage(w, c.zoomOut, [](WorkPage& p) { p.plan()->zoomOut(); });
    onPage(w, c.fit, [](WorkPage& p) { p.plan()->fit(); });
    onPage(w, c.table, [&c](WorkPage& p) { p.setTableShown(c.table->isChecked()); });
    onPage(w, c.history,
           [&w, &dialogs](WorkPage& p) { guarded(dialogs, [&] { history::showHistory(*w.desk(), dialogs, &p); }); });
    QObject::connect(w.statusLine(), &StatusLine::historyAsked, c.history, &QAction::trigger);
    QObject::connect(c.columns, &QMenu::aboutToShow, &w, [&w, &c] {
        if (w.page()) w.page()->table()->fill(*c.columns);
    });
    QObject::connect(c.steps, &QMenu::aboutToShow, &w, [&w, &c] {
        if (w.page()) w.page()->merge()->fill(c.steps);
    });
    QObject::connect(
        c.steps, &QMenu::aboutToHide, &w,
        [&w, &c] {
            if (w.page()) w.page()->merge()->empty(c.steps);
        },
        Qt::QueuedConnection); // what was picked is triggered first
    QObject::connect(c.larger, &QAction::triggered, &w,
                     [&w] { w.setTextPercent(look::textPercentAfter(look::textPercent(), true)); });
    QObject::connect(c.smaller, &QAction::triggered, &w,
                     [&w] { w.setTextPercent(look::textPercentAfter(look::textPercent(), false)); });
    QObject::connect(c.usual, &QAction::triggered, &w, [&w] { w.setTextPercent(look::kUsualText); });
    onPage(w, c.nextPane, [](WorkPage& p) { p.goToPane(1); });
    onPage(w, c.paneBefore, [](WorkPage& p) { p.goToPane(-1); });
}

void wireWelcome(MainWindow& w, const Commands& c) {
    const Welcome* welcome = w.welcome();
    QObject::connect(welcome, &Welcome::yardAsked, c.yards()->newYard, &QAction::trigger);
    QObject::connect(welcome, &Welcome::makeAsked, c.makeBook, &QAction::trigger);
    QObject::connect(welcome, &Welcome::openAsked, c.openBook, &QAction::trigger);
    QObject::connect(welcome, &Welcome::importAsked, c.importCsv, &QAction::trigger);
    QObject::connect(
        welcome, &Welcome::recentAsked, &w, [&w](const QString& path) { w.openBook(path); }, Qt::QueuedConnection);
}

} // namespace

void wire(MainWindow& window, Commands& commands, Dialogs& dialogs) {
    wireBook(window, commands, dialogs);
    wireEdit(window, commands);
    wireView(window, commands, dialogs);
    commands.pick()->wire(window, dialogs);
    commands.find()->wire(window);
    copiesOf(window)->wire(window, dialogs);
    commands.backups()->wire(window, dialogs);
    commands.salvage()->wire(window, dialogs);
    commands.exports()->wire(window, dialogs);
    commands.planPaper()->wire(window, dialogs);
    commands.visitPaper()->wire(window, dialogs);
    new PlanMenu(window, commands); // the window's
    commands.yards()->wire(window, dialogs);
    commands.time()->wire(window);
    wireSignNotice(window, dialogs);
    QObject::connect(new Remembered(&window), &Remembered::failed, &window, &MainWindow::say);
    wireWelcome(window, commands);
    QObject::connect(window.topBar(), &TopBar::undoAsked, &window, &MainWindow::undo);
    QObject::connect(window.topBar(), &TopBar::placeAsked, &window, &MainWindow::setPlace);
}

} // namespace ui::window
