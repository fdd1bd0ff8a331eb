#include "ui/look/paged.h"

#include "ui/look/page_tabs.h"

#include <QApplication>
#include <QFocusEvent>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ui::look {

Paged::Paged(const QString& name, QWidget* parent)
    : QWidget(parent), m_tabs(new PageTabs(this)), m_stack(new QStackedWidget(this)) {
    m_tabs->setAccessibleName(name);
    m_tabs->hide();
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(0);
    all->addWidget(m_tabs);
    all->addWidget(m_stack, 1);
    connect(m_tabs, &QTabBar::currentChanged, this, &Paged::showTab);
    for (const auto& [keys, by] :
         {std::pair(Qt::CTRL | Qt::Key_PageDown, 1), std::pair(Qt::CTRL | Qt::Key_PageUp, -1)}) {
        auto* shortcut = new QShortcut(QKeySequence(keys), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, [this, step = by] { turn(step); });
    }
}

void Paged::addPage(const QString& title, const QString& tip, QWidget* page, QWidget* keys) {
    m_keys.push_back(keys ? keys : page);
    m_stack->addWidget(page);
    m_tabs->addTab(title);
    m_tabs->setTabToolTip(m_tabs->count() - 1, tip);
    m_tabs->setVisible(m_tabs->count() > 1);
    showTab(m_tabs->currentIndex());
}

void Paged::show(QWidget* page) {
    if (const int at = m_stack->indexOf(page); at >= 0) m_tabs->setCurrentIndex(at);
}

QWidget* Paged::shown() const { return m_stack->currentWidget(); }

std::vector<QWidget*> Paged::pages() const {
    std::vector<QWidget*> all;
    for (int i = 0; i < m_stack->count(); ++i) all.push_back(m_stack->widget(i));
    return all;
}

void Paged::showTab(int tab) {
    if (tab < 0 || tab >= m_stack->count()) return;
    const QWidget* focus = QApplication::focusWidget();
    const bool had = focus && m_stack->isAncestorOf(focus);
    m_stack->setCurrentIndex(tab);
    QWidget* keys = m_keys[static_cast<size_t>(tab)];
    if (had) keys->setFocus(Qt::TabFocusReason);
    emit pageChanged(m_stack->currentWidget());
}

/// A proxy would keep Tab from the row of tabs.
void Paged::focusInEvent(QFocusEvent* event) {
    if (m_stack->count() > 0) m_keys[static_cast<size_t>(m_stack->currentIndex())]->setFocus(event->reason());
}

void Paged::turn(int by) {
    const int count = m_tabs->count();
    m_tabs->setCurrentIndex((m_tabs->currentIndex() + by + count) % count);
    m_keys[static_cast<size_t>(m_tabs->currentIndex())]->setFocus(Qt::ShortcutFocusReason);
}

} // namespace ui::look
