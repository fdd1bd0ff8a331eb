#include "ui/close/step_page.h"

#include "ui/look/type.h"

#include <QLabel>
#include <QVBoxLayout>

namespace ui::close {

StepPage::StepPage(desk::Desk& desk, Dialogs& dialogs, KeyFoot* foot, const QString& title, const QString& listName,
                   QWidget* parent)
    : QWidget(parent),
      m_desk(desk),
      m_dialogs(dialogs),
      m_head(new QVBoxLayout),
      m_list(new KeyList(
          listName, [this](int key) { return pressed(key); }, this)),
      m_panel(new form::FormPanel(this)),
      m_foot(foot) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 14, 0, 14);
    all->setSpacing(6);
    m_head->setSpacing(6);
    m_head->setContentsMargins(20, 0, 20, 0); // not of the labels: a change from light to dark takes theirs
    all->addLayout(m_head);
    QLabel* heading = label("heading", {});
    heading->setText(title);
    heading->setFont(look::headingFont(font()));
    all->addWidget(m_list, 1);
    all->addWidget(m_panel);
    m_panel->hide();
    all->addWidget(m_foot);
    addActions(m_foot->actions());
    setFocusProxy(m_list);
    connect(m_foot, &KeyFoot::asked, this, [this](int key) { pressed(key); });
    connect(
        m_list, &KeyList::keysCame, this, [this] { quietly([this] { keysCame(); }); }, Qt::QueuedConnection);
    connect(&m_desk, &desk::Desk::read, this, &StepPage::follow);
    connect(&m_desk, &desk::Desk::yardChanged, this, &StepPage::follow);
    connect(&m_desk, &desk::Desk::chosenChanged, this, &StepPage::showChosen);
    connect(m_list, &KeyList::rowMoved, this, &StepPage::moved);
    connect(m_panel, &form::FormPanel::said, &m_desk, &desk::Desk::said);
    connect(m_panel, &form::FormPanel::valuesChanged, m_panel, [this] { m_panel->updateGeometry(); });
    connect(m_panel, &form::FormPanel::closed, this, [this] {
        m_panel->hide();
        m_foot->show();
        m_list->setFocus(Qt::OtherFocusReason);
    });
}

QLabel* StepPage::label(const char* property, const QString& name) {
    auto* made = new QLabel(this);
    made->setProperty(property, true);
    made->setObjectName(name);
    made->setWordWrap(true);
    m_head->addWidget(made);
    return made;
}

void StepPage::follow() {
    m_stale = true;
    if (isVisible()) settle();
}

void StepPage::settle() {
    if (!m_stale) return;
    m_stale = false;
    guarded(m_dialogs, [this] { readAgain(); });
}

void StepPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    settle();
}

void StepPage::quietly(const std::function<void()>& work) {
    const bool was = m_telling;
    m_telling = true;
    work();
    m_telling = was;
}

void StepPage::moved() {
    if (m_telling) return;
    showCurrent();
    if (m_list->hasFocus()) quietly([this] { chooseCurrent(); });
}

/// The hive chosen elsewhere is looked for in the list, unless the row is about it already.
void StepPage::showChosen() {
    if (!isVisible() || m_telling || !m_desk.chosen()) return;
    const int found = rowAbout(*m_desk.chosen());
    if (found < 0 || found == row()) return;
    quietly([&] { m_list->goTo(found); });
    showCurrent();
}

void StepPage::openForm(std::unique_ptr<form::Form> form, form::FormPanel::Save save) {
    m_panel->open(std::move(form), m_desk.today(), std::move(save));
    m_foot->hide();
    m_panel->show();
    m_list->scrollTo(m_list->currentIndex()); // it has less room now
}

} // namespace ui::close
