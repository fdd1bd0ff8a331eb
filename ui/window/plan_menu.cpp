#include "ui/window/plan_menu.h"

#include "ui/board/board.h"
#include "ui/plan/plan_view.h"
#include "ui/table/hive_table.h"
#include "ui/window/commands.h"
#include "ui/window/main_window.h"
#include "ui/window/pick_commands.h"
#include "ui/window/plan_paper.h"
#include "ui/window/work_page.h"
#include "ui/window/yard_commands.h"

#include <QMenu>

namespace ui::window {

PlanMenu::PlanMenu(MainWindow& window, Commands& commands) : QObject(&window), m_window(window), m_commands(commands) {
    connect(&window, &MainWindow::bookOpened, this, &PlanMenu::connectPage);
}

void PlanMenu::connectPage() {
    connect(m_window.page()->plan(), &plan::PlanView::menuAsked, this, &PlanMenu::show);
    table::HiveTable* table = m_window.page()->table();
    table->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(table, &QWidget::customContextMenuRequested, this,
            [this, table](const QPoint& at) { show(table->viewport()->mapToGlobal(at)); });
}

/// What the menu is of.
QString PlanMenu::title() const {
    const desk::Desk& desk = *m_window.desk();
    const desk::Reading& r = desk.reading();
    if (desk.selected().size() > 1) return tr("%1 hives selected").arg(desk.selected().size());
    if (desk.chosen())
        if (const auto ix = r.find(*desk.chosen())) return r.snapshot.colony(*ix).shown;
    const auto yard = desk.yard() ? r.find(*desk.yard()) : std::nullopt;
    return yard ? r.snapshot.yard(*yard).name : QString();
}

void PlanMenu::show(const QPoint& globalAt) {
    if (!m_window.desk()) return;
    auto* menu = new QMenu(m_window.page());
    menu->setObjectName(QStringLiteral("planMenu"));
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->addAction(title().replace(u'&', QStringLiteral("&&")))->setEnabled(false);
    menu->addSeparator();
    if (m_window.desk()->selected().size() > 1)
        addSeveral(*menu);
    else if (m_window.desk()->chosen())
        addHive(*menu);
    else
        addYard(*menu);
    if (m_window.page()->place() == Place::MergeDay && m_window.desk()->chosen()) {
        menu->addSeparator();
        menu->addActions(m_window.page()->board()->chosenActions());
    }
    menu->addSeparator();
    menu->addAction(m_commands.pick()->find);
    menu->addMenu(m_commands.pick()->select);
    menu->addAction(m_commands.fit);
    menu->addAction(m_commands.planPaper()->print);
    menu->popup(globalAt);
}

void PlanMenu::addHive(QMenu& menu) {
    menu.addAction(m_commands.logVisit);
    for (const auto& [what, action] : m_commands.notes) menu.addAction(action);
    menu.addSeparator();
    menu.addAction(m_commands.yards()->carry);
}

void PlanMenu::addSeveral(QMenu& menu) { menu.addAction(m_commands.pick()->visits); }

void PlanMenu::addYard(QMenu& menu) {
    menu.addAction(m_commands.yards()->hiveRow);
    menu.addAction(m_commands.yards()->placeHives);
}

} // namespace ui::window
