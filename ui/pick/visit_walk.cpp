#include "ui/pick/visit_walk.h"

#include "ui/pick/walking_order.h"
#include "ui/visit/visit_form.h"

namespace ui::pick {

VisitWalk::VisitWalk(desk::Desk& desk, visit::VisitForm& form, Form turn, QObject* parent)
    : QObject(parent), m_desk(desk), m_form(form), m_turn(std::move(turn)) {}

bool VisitWalk::underWay() const {
    return m_at < m_order.size() && m_form.isVisible() && m_form.place().colony == m_order[m_at];
}

void VisitWalk::goOn() {
    if (!underWay()) return begin();
    if (m_form.dirty()) return emit m_desk.said(tr("This visit is not saved: Enter saves it and goes on."));
    if (!openFrom(m_at + 1)) end();
}

void VisitWalk::begin() {
    const auto yard = m_desk.yard() ? m_desk.reading().find(*m_desk.yard()) : std::nullopt;
    if (!yard || m_desk.selected().empty())
        return emit m_desk.said(tr("Select hives first: their visits are logged one after the other."));
    walk(walkingOrder(m_desk.reading(), *yard, m_desk.selected()));
}

void VisitWalk::walk(std::vector<core::ColonyId> order) {
    m_order = std::move(order);
    m_saved = 0;
    if (!openFrom(0)) m_order.clear();
}

/// The form of the first that still lives, from there on.
bool VisitWalk::openFrom(size_t at) {
    while (at < m_order.size() && !m_desk.reading().find(m_order[at])) ++at;
    if (at >= m_order.size() || !m_turn(m_order[at])) return false;
    m_at = at;
    m_desk.select(std::vector(m_order), m_order[at]);
    const QString step = tr("%1 of %2").arg(at + 1).arg(m_order.size());
    m_form.setStep(
        tr("%1 on this walk. Enter saves and goes on, Ctrl + Shift + L passes this hive over, Escape leaves.")
            .arg(step));
    emit m_desk.said(tr("%1: visit of %2.").arg(step, m_form.place().label));
    return true;
}

void VisitWalk::saved(core::ColonyId colony) {
    if (m_at >= m_order.size()) return;
    if (m_order[m_at] != colony) return m_order.clear(); // another visit, no longer the walk's
    ++m_saved;
    if (!openFrom(m_at + 1)) end();
}

void VisitWalk::end() {
    const size_t all = m_order.size();
    m_order.clear();
    m_turn({});
    emit m_desk.said(tr("The walk is done: %1 of %2 hives visited.").arg(m_saved).arg(all));
}

void VisitWalk::left() {
    if (m_order.empty()) return;
    emit m_desk.said(tr("The walk is left: %1 of %2 hives visited.").arg(m_saved).arg(m_order.size()));
    m_order.clear();
}

} // namespace ui::pick
