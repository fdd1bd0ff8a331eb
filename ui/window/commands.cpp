#include "ui/window/commands.h"

#include "ui/window/backup_commands.h"
#include "ui/window/copy_commands.h"
#include "ui/window/export_commands.h"
#include "ui/window/find_commands.h"
#include "ui/window/pick_commands.h"
#include "ui/window/plan_paper.h"
#include "ui/window/salvage_commands.h"
#include "ui/window/time_commands.h"
#include "ui/window/visit_paper.h"
#include "ui/window/yard_commands.h"

#include <QAction>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>

namespace ui::window {

QAction* Commands::add(QMenu* menu, const QString& text, const QString& keys, const QString& tip) {
    QAction* action = menu->addAction(text);
    if (!keys.isEmpty()) action->setShortcut(QKeySequence(keys));
    action->setStatusTip(tip);
    m_window->addAction(action); // its keys work wherever the focus is
    return action;
}

Commands::Commands(QMenuBar* bar, QWidget* window) : QObject(window), m_window(window) {
    QMenu* book = bar->addMenu(tr("&Book"));
    addFiles(book);
    addPaper(book);
    addKeeping(book);
    addEdit(bar->addMenu(tr("&Edit")));
    m_yards = new YardCommands(bar, window);
    addRecord(bar->addMenu(tr("&Record")));
    steps = bar->addMenu(tr("&Merge day"));
    QMenu* view = bar->addMenu(tr("&View"));
    addPlaces(view);
    addPlan(view);
    addText(view);
    setBookOpen(false, false);
    setUndo({}, {});
}

void Commands::addFiles(QMenu* book) {
    makeBook = add(book, tr("&New…"), QStringLiteral("Ctrl+N"), tr("Make a new, empty book"));
    openBook = add(book, tr("&Open…"), QStringLiteral("Ctrl+O"), tr("Open a book"));
    m_recent = book->addMenu(tr("&Recent"));
    tryAgain = add(book, tr("&Try again to change it here"), QStringLiteral("F5"),
                   tr("Where another window has the book: look whether it is gone"));
    book->addSeparator();
    importCsv =
        add(book, tr("&Import CSV files…"), {}, tr("Read yards, colonies and visits from a folder of CSV files"));
    readFile = add(book, tr("Read a fi&le of any program…"), QStringLiteral("Ctrl+Alt+I"),
                   tr("Read a CSV file as another program wrote it: its columns are mapped to those of the book"));
    m_exports = new ExportCommands(book, m_window);
    book->addSeparator();
}

void Commands::addPaper(QMenu* book) {
    preview =
        add(book, tr("Pre&view worksheet"), QStringLiteral("Ctrl+Shift+P"), tr("Look at the merge day's worksheet"));
    print = add(book, tr("&Print worksheet…"), QStringLiteral("Ctrl+P"), tr("Print the merge day's worksheet"));
    pdf = add(book, tr("Worksheet as P&DF…"), {}, tr("Write the merge day's worksheet to a file"));
    m_visitPaper = new VisitPaper(book, m_window);
    m_planPaper = new PlanPaper(book, m_window);
    book->addSeparator();
}

void Commands::addKeeping(QMenu* book) {
    m_backups = new BackupCommands(book, m_window);
    m_salvage = new SalvageCommands(book, m_window);
    new CopyCommands(book, m_window); // the window's
    settings =
        add(book, tr("&Settings…"), QStringLiteral("Ctrl+,"), tr("Limits, seasons, weights and units of this book"));
    m_authors = book->addMenu(tr("Written &by"));
    people = add(m_authors, tr("&People…"), {}, tr("The names of those who keep this book"));
    close = add(book, tr("&Close"), QStringLiteral("Ctrl+Q"), tr("Close the window; everything is saved"));
}

void Commands::addEdit(QMenu* edit) {
    undo = add(edit, tr("&Undo"), QStringLiteral("Ctrl+Z"), tr("Take the last edit back"));
    redo = add(edit, tr("&Redo"), QStringLiteral("Ctrl+Shift+Z"), tr("Make the edit again that was taken back"));
    edit->addSeparator();
    findColony = add(edit, tr("&Find a colony…"), QStringLiteral("Ctrl+F"), tr("Living or ended, by its label"));
    m_find = new FindCommands(edit, m_window);
    m_pick = new PickCommands(edit, m_window);
}

void Commands::addRecord(QMenu* record) {
    logVisit = add(record, tr("&Visit…"), QStringLiteral("Ctrl+L"), tr("Write down a visit of the chosen hive"));
    m_pick->addVisits(record);
    record->addSeparator();
    for (const records::NewRecordWords& w : records::newRecordWords())
        notes.emplace_back(w.what, add(record, w.text, w.keys, w.tip));
}

void Commands::addPlaces(QMenu* view) {
    yardPlan = add(view, tr("Yard &plan"), QStringLiteral("Ctrl+1"), tr("The yard as it stands today"));
    colonies =
        add(view, tr("&Colonies"), QStringLiteral("Ctrl+2"), tr("All colonies as a list, and questions asked of them"));
    visits = add(view, tr("&Visits"), QStringLiteral("Ctrl+3"), tr("Write visits down, and look them up"));
    mergeDay = add(view, tr("&Merge day"), QStringLiteral("Ctrl+4"), tr("What to unite, and what not to touch"));
    health =
        add(view, tr("Health"), QStringLiteral("Ctrl+5"), tr("Who is held and why, and who had contact with whom"));
    season =
        add(view, tr("Seaso&n"), QStringLiteral("Ctrl+6"), tr("Strength, mites, feed, queens and losses over time"));
    for (QAction* a : {colonies, visits, health, season}) a->setVisible(false); // until there is a place for it
    view->addSeparator();
}

void Commands::addPlan(QMenu* view) {
    m_time = new TimeCommands(view, m_window);
    view->addSeparator();
    zoomIn = add(view, tr("Zoom &in"), QStringLiteral("Ctrl++"), tr("Look closer"));
    zoomIn->setShortcuts({QKeySequence(QStringLiteral("Ctrl++")), QKeySequence(QStringLiteral("Ctrl+="))});
    zoomOut = add(view, tr("Zoom &out"), QStringLiteral("Ctrl+-"), tr("Look from further away"));
    fit = add(view, tr("&Whole yard"), QStringLiteral("Ctrl+0"), tr("Show the whole yard"));
    view->addSeparator();
    table = add(view, tr("&Table of hives"), QStringLiteral("Ctrl+T"), tr("The same hives as a table beside the plan"));
    table->setCheckable(true);
    history = add(view, tr("&History…"), QStringLiteral("Ctrl+H"), tr("What was done, when and by whom"));
    columns = view->addMenu(tr("Columns of th&e table"));
    view->addSeparator();
}

void Commands::addText(QMenu* view) {
    larger = add(view, tr("&Larger text"), {}, tr("All text larger, up to twice its usual size"));
    smaller = add(view, tr("&Smaller text"), {}, tr("All text smaller"));
    usual = add(view, tr("&Usual text"), {}, tr("Text at the system's size"));
    // The second of each is what a keyboard sends that has these signs only with Shift.
    larger->setShortcuts({QKeySequence(QStringLiteral("Ctrl+Shift++")), QKeySequence(QStringLiteral("Ctrl+Shift+="))});
    smaller->setShortcuts({QKeySequence(QStringLiteral("Ctrl+Shift+-")), QKeySequence(QStringLiteral("Ctrl+Shift+_"))});
    usual->setShortcuts({QKeySequence(QStringLiteral("Ctrl+Shift+0")), QKeySequence(QStringLiteral("Ctrl+Shift+)"))});
    view->addSeparator();
    nextPane = add(view, tr("Ne&xt pane"), QStringLiteral("F6"),
                   tr("The keys go on: yards, plan, date bar, table, right side"));
    paneBefore = add(view, tr("Pane &before"), QStringLiteral("Shift+F6"), tr("The keys go back a pane"));
}

void Commands::setBookOpen(bool open, bool writable) {
    for (QAction* a : {yardPlan, mergeDay, colonies, visits, health, season, zoomIn, zoomOut, fit, table, history,
                       nextPane, paneBefore, findColony, preview, print, pdf, settings, people})
        a->setEnabled(open);
    for (QAction* a : {importCsv, readFile, logVisit}) a->setEnabled(open && writable);
    columns->setEnabled(open);
    steps->setEnabled(open);
    tryAgain->setEnabled(open && !writable);
    m_pick->setBookOpen(open, writable);
    m_visitPaper->setBookOpen(open);
    m_find->setBookOpen(open);
    m_backups->setBookOpen(open);
    m_exports->setBookOpen(open);
    m_planPaper->setBookOpen(open);
    m_yards->setBookOpen(open, writable);
    m_time->setBookOpen(open);
    for (const auto& [what, action] : notes) action->setEnabled(open && writable);
}

QAction* Commands::placeAction(Place place) const {
    switch (place) {
    case Place::YardPlan:
        return yardPlan;
    case Place::MergeDay:
        return mergeDay;
    case Place::Colonies:
        return colonies;
    case Place::Visits:
        return visits;
    case Place::Season:
        return season;
    case Place::Health:
        return health;
    }
    return nullptr;
}

void Commands::setUndo(const QString& undoText, const QString& redoText) {
    undo->setEnabled(!undoText.isEmpty());
    undo->setText(undoText.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(undoText));
    redo->setEnabled(!redoText.isEmpty());
    redo->setText(redoText.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(redoText));
}

void Commands::setAuthors(const QStringList& names, const QString& author) {
    for (QAction* a : m_authors->actions())
        if (a != people) delete a;
    for (const QString& name : names) {
        auto* action = new QAction(QString(name).replace(u'&', QStringLiteral("&&")), m_authors);
        action->setCheckable(true);
        action->setChecked(name == author);
        connect(action, &QAction::triggered, this, [this, name] { emit authorAsked(name); });
        m_authors->insertAction(people, action);
    }
    m_authors->setTitle(author.isEmpty() ? tr("Written &by") : tr("Written &by %1").arg(author));
    if (!names.isEmpty()) m_authors->insertSeparator(people);
}

void Commands::setRecent(const QStringList& paths) {
    m_recent->clear();
    for (const QString& path : paths) {
        QAction* action = m_recent->addAction(QFileInfo(path).completeBaseName());
        action->setStatusTip(path);
        connect(action, &QAction::triggered, this, [this, path] { emit recentAsked(path); });
    }
    m_recent->setEnabled(!paths.isEmpty());
}

} // namespace ui::window
