#include "ui/window/pick_commands.h"

#include "ui/bulk/bulk.h"
#include "ui/dialogs.h"
#include "ui/pick/picker.h"
#include "ui/window/main_window.h"
#include "ui/window/wiring.h"
#include "ui/window/work_page.h"

#include <QAction>
#include <QMenu>

namespace ui::window {

PickCommands::PickCommands(QMenu* edit, QWidget* window) : QObject(window), m_window(window) {
    const auto add = [window](QMenu* menu, const QString& text, const QString& keys, const QString& tip) {
        QAction* action = menu->addAction(text);
        if (!keys.isEmpty()) action->setShortcut(QKeySequence(keys));
        action->setStatusTip(tip);
        window->addAction(action);
        return action;
    };
    find = add(edit, tr("Find &on the plan"), QStringLiteral("Ctrl+Shift+F"),
               tr("The plan flies to a label as it is typed; on the plan itself just type it"));
    select = edit->addMenu(tr("&Select"));
    for (const pick::RuleWords& words : pick::ruleWords())
        byRule.emplace_back(words, add(select, words.text, {}, words.tip));
    select->addSeparator();
    all = add(select, tr("&All of the yard"), QStringLiteral("Ctrl+A"), tr("Every hive of the yard shown"));
    others = add(select, tr("The &others instead"), QStringLiteral("Ctrl+Shift+I"),
                 tr("Those that are not selected now, and no others"));
    changeEach = add(edit, tr("&Change those selected…"), QStringLiteral("Ctrl+Alt+K"),
                     tr("Box kind, year of the queen, note: of all selected hives at once"));
    none = add(select, tr("Non&e"), QStringLiteral("Ctrl+Shift+A"), tr("No hive of the yard"));
}

void PickCommands::addVisits(QMenu* record) {
    visits = record->addAction(tr("Vis&its of those selected"));
    visits->setShortcut(QKeySequence(QStringLiteral("Ctrl+Shift+L")));
    visits->setStatusTip(tr("One after the other along a short walk from the gate; again: passes the hive over"));
    m_window->addAction(visits);
    visitEach = record->addAction(tr("The same visit of &all selected…"));
    visitEach->setShortcut(QKeySequence(QStringLiteral("Ctrl+Alt+L")));
    visitEach->setStatusTip(tr("The same figures or words, as a visit of each selected hive"));
    m_window->addAction(visitEach);
}

void PickCommands::setBookOpen(bool open, bool writable) {
    for (QAction* a : {visits, visitEach, changeEach}) a->setEnabled(open && writable);
    for (QAction* a : {find, all, others, none}) a->setEnabled(open);
    for (const auto& [words, action] : byRule) action->setEnabled(open);
    select->setEnabled(open);
}

void PickCommands::wire(MainWindow& window, Dialogs& dialogs) {
    const auto begin = [&window](QAction* action, auto work) {
        onPage(window, action, [work](WorkPage& page) { work(*page.picker()); });
    };
    onPage(window, visits, [](WorkPage& page) { page.walk(); });
    const auto together = [&window, &dialogs](QAction* action, auto work) {
        onPage(window, action, [&window, &dialogs, work](WorkPage& page) {
            guarded(dialogs, [&] {
                work(*window.desk(),
                     [&page](std::unique_ptr<form::Form> f) { return page.openForm(std::move(f)) != nullptr; });
            });
        });
    };
    together(visitEach, bulk::visitSelected);
    together(changeEach, bulk::changeSelected);
    begin(find, [](pick::Picker& p) { p.find(); });
    begin(all, [](pick::Picker& p) { p.select(pick::Picker::Whole::All); });
    begin(others, [](pick::Picker& p) { p.select(pick::Picker::Whole::Others); });
    begin(none, [](pick::Picker& p) { p.select(pick::Picker::Whole::None); });
    for (const auto& [words, action] : byRule) begin(action, [by = words](pick::Picker& p) { p.select(by); });
}

} // namespace ui::window
