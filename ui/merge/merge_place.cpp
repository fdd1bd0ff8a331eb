#include "ui/merge/merge_place.h"

#include "ui/look/page_tabs.h"

#include <QAction>
#include <QMenu>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ui::merge {

namespace {

struct Words {
    const char* title;
    const char* tip;
};
constexpr Words kWords[] = {
    {QT_TRANSLATE_NOOP("ui::merge::MergePlace", "Get ready"),
     QT_TRANSLATE_NOOP("ui::merge::MergePlace", "What is missing for a good plan, and what to load")},
    {QT_TRANSLATE_NOOP("ui::merge::MergePlace", "Plan"),
     QT_TRANSLATE_NOOP("ui::merge::MergePlace", "What to unite, and what not to touch")},
    {QT_TRANSLATE_NOOP("ui::merge::MergePlace", "Write back"),
     QT_TRANSLATE_NOOP("ui::merge::MergePlace", "What was really done, strip by strip")},
    {QT_TRANSLATE_NOOP("ui::merge::MergePlace", "Afterwards"),
     QT_TRANSLATE_NOOP("ui::merge::MergePlace", "Checks that are due, and what came of the unions")},
};

} // namespace

MergePlace::MergePlace(QWidget* parent) : QWidget(parent) {
    m_tabs = new look::PageTabs(this);
    m_tabs->setObjectName(QStringLiteral("mergeSteps"));
    m_tabs->setAccessibleName(tr("Steps of the merge day"));
    m_tabs->setDrawBase(false);
    m_tabs->setExpanding(false);
    m_stack = new QStackedWidget(this);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(0);
    all->addWidget(m_tabs);
    all->addWidget(m_stack, 1);
    for (size_t i = 0; i < kSteps; ++i) {
        auto* action = new QAction(tr(kWords[i].title), this);
        action->setShortcut(QKeySequence(QStringLiteral("Alt+%1").arg(i + 1)));
        action->setToolTip(tr(kWords[i].tip));
        action->setStatusTip(tr(kWords[i].tip));
        action->setCheckable(true);
        action->setEnabled(false);
        connect(action, &QAction::triggered, this, [this, i] {
            emit stepAsked();
            setStep(static_cast<Step>(i));
            m_keys[i]->setFocus(Qt::ShortcutFocusReason);
        });
        m_actions.push_back(action);
    }
    connect(m_tabs, &QTabBar::currentChanged, this, &MergePlace::showTab);
}

int MergePlace::tabOf(Step step) const {
    for (int i = 0; i < m_tabs->count(); ++i)
        if (m_tabs->tabData(i).toInt() == static_cast<int>(step)) return i;
    return -1;
}

void MergePlace::addStep(Step step, QWidget* page, QWidget* keys) {
    const auto at = static_cast<size_t>(step);
    m_pages[at] = page;
    m_keys[at] = keys ? keys : page;
    m_stack->addWidget(page);
    int tab = 0;
    while (tab < m_tabs->count() && m_tabs->tabData(tab).toInt() < static_cast<int>(step)) ++tab;
    const QSignalBlocker quiet(m_tabs); // the data comes after the tab
    m_tabs->insertTab(tab, tr(kWords[at].title));
    m_tabs->setTabData(tab, static_cast<int>(step));
    m_tabs->setTabToolTip(
        tab, tr("%1 (%2)").arg(tr(kWords[at].tip), m_actions[static_cast<int>(step)]->shortcut().toString()));
    m_tabs->setVisible(m_tabs->count() > 1);
    m_actions[static_cast<int>(step)]->setEnabled(true);
    const int plan = tabOf(Step::Plan);
    m_tabs->setCurrentIndex(plan < 0 ? 0 : plan);
    showTab(m_tabs->currentIndex());
}

Step MergePlace::step() const { return static_cast<Step>(m_tabs->tabData(m_tabs->currentIndex()).toInt()); }

void MergePlace::setStep(Step step) {
    if (const int tab = tabOf(step); tab >= 0) m_tabs->setCurrentIndex(tab);
}

void MergePlace::showTab(int tab) {
    if (tab < 0) return;
    const auto step = static_cast<Step>(m_tabs->tabData(tab).toInt());
    m_stack->setCurrentWidget(page(step));
    setFocusProxy(page(step));
    for (size_t i = 0; i < kSteps; ++i) m_actions[static_cast<int>(i)]->setChecked(i == static_cast<size_t>(step));
    emit stepChanged(step);
}

void MergePlace::empty(QMenu* menu) const {
    menu->clear();
    for (QAction* action : m_actions)
        if (action->isEnabled()) menu->addAction(action);
}

void MergePlace::fill(QMenu* menu) const {
    empty(menu);
    const QWidget* shown = m_stack->currentWidget();
    if (!shown || shown->actions().isEmpty()) return;
    menu->addSeparator();
    menu->addActions(shown->actions());
}

} // namespace ui::merge
