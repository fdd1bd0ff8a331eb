#include "ui/plan/plan_accessible.h"

#include "ui/plan/plan_view.h"

#include <QPointer>

#include <algorithm>

namespace ui::plan {

namespace {

/// One hive of a plan. Not valid once the hive is gone from the drawing.
class HiveAccessible : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    HiveAccessible(PlanView* view, core::ColonyId colony) : m_view(view), m_colony(colony) {}

    core::ColonyId colony() const { return m_colony; }

    bool isValid() const override { return mark() != nullptr; }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override { return m_view ? m_view->window()->windowHandle() : nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(m_view); }
    QAccessibleInterface* child(int) const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    void setText(QAccessible::Text, const QString&) override {}

    QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Name && mark() ? mark()->spoken : QString();
    }
    QRect rect() const override {
        if (!mark()) return {};
        const QRect here = m_view->boxOf(m_colony);
        return {m_view->mapToGlobal(here.topLeft()), here.size()};
    }
    QAccessible::State state() const override {
        QAccessible::State s;
        s.invalid = !mark();
        if (!mark()) return s;
        const bool chosen = m_view->chosenHive() == m_colony;
        s.selectable = s.focusable = true;
        const auto& selected = m_view->selected();
        s.multiSelectable = true;
        s.selected = chosen || std::find(selected.begin(), selected.end(), m_colony) != selected.end();
        s.focused = chosen && m_view->hasFocus();
        s.offscreen = !m_view->rect().intersects(m_view->boxOf(m_colony));
        s.invisible = !m_view->isVisible();
        return s;
    }

    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }
    QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    void doAction(const QString& name) override {
        if (!mark()) return;
        m_view->pick(m_colony);
        if (name == setFocusAction()) m_view->setFocus(Qt::OtherFocusReason);
    }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    const HiveMark* mark() const {
        const auto at = m_view ? m_view->scene().find(m_colony) : std::nullopt;
        return at ? &m_view->scene().hives[*at] : nullptr;
    }

    QPointer<PlanView> m_view;
    core::ColonyId m_colony;
};

QAccessibleInterface* interfaceFor(const QString&, QObject* object) {
    auto* view = qobject_cast<PlanView*>(object);
    return view ? new PlanAccessible(view) : nullptr;
}

} // namespace

void PlanAccessible::install() { QAccessible::installFactory(interfaceFor); }

PlanAccessible::PlanAccessible(PlanView* view) : QAccessibleWidget(view, QAccessible::List) {}

PlanAccessible::~PlanAccessible() {
    for (const auto& [colony, id] : m_hives) QAccessible::deleteAccessibleInterface(id);
}

PlanView* PlanAccessible::plan() const { return static_cast<PlanView*>(widget()); }

int PlanAccessible::childCount() const { return static_cast<int>(plan()->scene().hives.size()); }

QAccessibleInterface* PlanAccessible::child(int index) const {
    if (index < 0 || index >= childCount()) return nullptr;
    const core::ColonyId colony = plan()->scene().hives[static_cast<size_t>(index)].colony;
    auto it = m_hives.find(colony);
    if (it == m_hives.end()) {
        auto* hive = new HiveAccessible(plan(), colony);
        it = m_hives.emplace(colony, QAccessible::registerAccessibleInterface(hive)).first;
    }
    return QAccessible::accessibleInterface(it->second);
}

QAccessibleInterface* PlanAccessible::childAt(int x, int y) const {
    const QPoint here = plan()->mapFromGlobal(QPoint(x, y));
    for (int i = 0; i < childCount(); ++i)
        if (plan()->boxOf(plan()->scene().hives[static_cast<size_t>(i)].colony).contains(here)) return child(i);
    return nullptr;
}

QAccessibleInterface* PlanAccessible::focusChild() const {
    const auto chosen = plan()->chosenHive();
    const auto at = chosen && plan()->hasFocus() ? plan()->scene().find(*chosen) : std::nullopt;
    return at ? child(static_cast<int>(*at)) : QAccessibleWidget::focusChild();
}

int PlanAccessible::indexOfChild(const QAccessibleInterface* child) const {
    const auto* hive = dynamic_cast<const HiveAccessible*>(child);
    const auto at = hive ? plan()->scene().find(hive->colony()) : std::nullopt;
    return at ? static_cast<int>(*at) : -1;
}

void announceHive(PlanView& view, core::ColonyId colony) {
    const auto at = view.scene().find(colony);
    if (!at) return;
    const auto index = static_cast<int>(*at);
    QAccessibleEvent focus(&view, QAccessible::Focus);
    focus.setChild(index);
    QAccessible::updateAccessibility(&focus);
    QAccessibleEvent selection(&view, QAccessible::Selection);
    selection.setChild(index);
    QAccessible::updateAccessibility(&selection);
}

} // namespace ui::plan
