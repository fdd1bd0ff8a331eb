#include "ui/window/yard_commands.h"

#include "ui/dialogs.h"
#include "ui/hand/hand_desk.h"
#include "ui/kit/kit_window.h"
#include "ui/ledger/ledger_window.h"
#include "ui/start/start_desk.h"
#include "ui/survey/survey_desk.h"
#include "ui/window/main_window.h"
#include "ui/window/wiring.h"
#include "ui/window/work_page.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>

namespace ui::window {

YardCommands::YardCommands(QMenuBar* bar, QWidget* window) : QObject(window) {
    QMenu* menu = bar->addMenu(tr("&Yard"));
    const auto add = [&](const QString& text, const QString& keys, const QString& tip) {
        QAction* action = menu->addAction(text);
        if (!keys.isEmpty()) action->setShortcut(QKeySequence(keys));
        action->setStatusTip(tip);
        window->addAction(action);
        return action;
    };
    hiveRow = add(tr("Set up a &row of hives…"), QStringLiteral("Ctrl+Shift+G"), tr("Hives all alike, evenly spaced"));
    placeHives = add(tr("&Place hives one by one…"), QStringLiteral("Ctrl+G"),
                     tr("Click on the drawing where each hive stands"));
    carry = add(tr("Carry the chosen &hive to…"), QStringLiteral("Ctrl+Shift+C"),
                tr("To another place or yard, on any day; today's carries are dragged"));
    swap = add(tr("S&wap the two selected hives"), QStringLiteral("Ctrl+Shift+W"),
               tr("Two hives change places; by mouse: drag one onto the other with Shift"));
    survey = add(tr("&Survey: correct the drawing"), QStringLiteral("Ctrl+Shift+S"),
                 tr("Move stands, turn hives, draw hedges and sheds: no hive is carried by it"));
    survey->setCheckable(true);
    menu->addSeparator();
    newYard = add(tr("&New yard…"), QStringLiteral("Ctrl+Shift+Y"), tr("Name a yard and say where it is"));
    changeYard = add(tr("&Change this yard…"), {}, tr("Its name, where it lies, its gate"));
    menu->addSeparator();
    ledger = add(tr("&Ledger of colonies…"), QStringLiteral("Ctrl+Shift+B"),
                 tr("Fall count, given up, lost, divided, spring count: by yard and year"));
    kit = add(tr("&Kit…"), QStringLiteral("Ctrl+K"), tr("Floors, lids and boxes of the yards and the store room"));
    setBookOpen(false, false);
}

void YardCommands::setBookOpen(bool open, bool writable) {
    m_writable = open && writable;
    kit->setEnabled(open);
    ledger->setEnabled(open);
    newYard->setEnabled(m_writable);
    setYards(m_any);
}

void YardCommands::setYards(bool any) {
    m_any = any;
    for (QAction* a : {hiveRow, placeHives, carry, swap, changeYard, survey}) a->setEnabled(m_writable && any);
}

void YardCommands::wire(MainWindow& window, Dialogs& dialogs) {
    const auto begin = [&](QAction* action, auto work) {
        onPage(window, action, [&window, &dialogs, work](WorkPage& page) {
            if (page.place() != Place::YardPlan) window.setPlace(Place::YardPlan);
            if (page.place() == Place::YardPlan) guarded(dialogs, [&] { work(*page.start()); });
        });
    };
    begin(newYard, [](start::StartDesk& s) { s.newYard(); });
    begin(changeYard, [](start::StartDesk& s) { s.changeYard(); });
    begin(hiveRow, [](start::StartDesk& s) { s.hiveRow(); });
    begin(carry, [](start::StartDesk& s) { s.carry(); });
    onPage(window, swap, [&dialogs](WorkPage& page) { guarded(dialogs, [&] { page.hand()->swapSelected(); }); });
    begin(placeHives, [](start::StartDesk& s) { s.placeHives(); });
    onPage(window, ledger, [&window, &dialogs](WorkPage& page) {
        guarded(dialogs, [&] { ledger::showLedger(*window.desk(), dialogs, &page); });
    });
    onPage(window, kit, [&window, &dialogs](WorkPage& page) {
        guarded(dialogs, [&] { kit::showKit(*window.desk(), dialogs, &page); });
    });
    wireSurvey(window);
}

void YardCommands::wireSurvey(MainWindow& window) {
    onPage(window, survey, [this, &window](WorkPage& page) {
        if (page.place() != Place::YardPlan) window.setPlace(Place::YardPlan);
        if (page.place() == Place::YardPlan) page.survey()->setOn(survey->isChecked());
        survey->setChecked(page.survey()->on());
    });
    connect(&window, &MainWindow::bookOpened, this, [this, &window] {
        survey->setChecked(false);
        if (window.page())
            connect(window.page()->survey(), &survey::SurveyDesk::onChanged, survey, &QAction::setChecked);
    });
}

} // namespace ui::window
