// Hives in the hand on PlanView: picked up by mouse or keys, shown on their way, set down or brought back.

#include "ui/plan/plan_view.h"

#include "ui/look/words.h"
#include "ui/plan/paint_carry.h"
#include "ui/plan/paint_drift.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

namespace ui::plan {

/// Others that are selected with the hive.
std::vector<Picked> PlanView::pickedWith(core::ColonyId hive) const {
    std::vector<Picked> others;
    if (std::find(m_selected.begin(), m_selected.end(), hive) == m_selected.end()) return others;
    for (const core::ColonyId colony : m_selected)
        if (const auto at = m_scene.find(colony); at && colony != hive)
            others.push_back({colony, m_scene.hives[*at].at});
    return others;
}

/// One of several that are selected picks all of them up; only a click chooses it alone.
void PlanView::pressHive(size_t hive, const QMouseEvent& event) {
    const Picked picked{m_scene.hives[hive].colony, m_scene.hives[hive].at};
    const std::vector<Picked> others = m_tool ? std::vector<Picked>() : pickedWith(picked.colony);
    m_pressedSelected.reset();
    if (others.empty())
        choose(hive);
    else
        m_pressedSelected = picked.colony;
    if (!m_tool) m_drag.press(picked, event.position(), others);
}

void PlanView::dragTo(const QMouseEvent& event) {
    std::optional<Carry> carry;
    if (m_guide && !rect().contains(event.position().toPoint()))
        carry = m_drag.moveOutside(m_guide->yardAt(event.globalPosition().toPoint()));
    else
        carry = m_drag.move(event.position(), !(event.modifiers() & Qt::AltModifier),
                            event.modifiers() & Qt::ShiftModifier);
    if (!carry) return;
    m_pressedSelected.reset();
    if (m_carryBarred.isEmpty()) return showCarry(*carry);
    m_drag.abort();
    emit said(m_carryBarred);
}

/// Where nobody knows the rules.
CarryWords PlanView::plainWords(const Carry& carry) const {
    CarryWords words;
    const auto hive = m_scene.find(carry.colony);
    const auto other = carry.blockedBy ? m_scene.find(*carry.blockedBy) : std::nullopt;
    words.refused = carry.blocked();
    if (!hive || carry.goesNowhere()) return words;
    words.beside = look::distanceOf(carry.from, carry.to, m_scene.units.length);
    words.line = other ? tr("%1: %2 stands there.").arg(m_scene.hives[*hive].label, m_scene.hives[*other].label)
                       : tr("%1: %2.").arg(m_scene.hives[*hive].label,
                                           look::wayText(carry.from, carry.to, m_scene.units.length));
    return words;
}

void PlanView::showCarry(const Carry& carry) {
    const bool begins = !m_carry;
    m_carry = carry;
    m_words = m_guide ? m_guide->wordsOf(carry) : plainWords(carry);
    if (begins) {
        m_frameStale = true;
        setCursor(Qt::ClosedHandCursor);
        emit carryingChanged(true);
    }
    if (!m_words.line.isEmpty()) emit said(m_words.line);
    update();
}

/// What was in the hand; nothing is drawn of it any more.
std::optional<Carry> PlanView::emptyHand() {
    m_nudgeDone.stop();
    m_pressedSelected.reset();
    std::optional<Carry> shown = std::exchange(m_carry, std::nullopt);
    if (!shown) return shown;
    m_words = {};
    unsetCursor();
    m_frameStale = true;
    update();
    if (m_guide) m_guide->emptied();
    emit carryingChanged(false);
    return shown;
}

void PlanView::setDown() {
    const auto clicked = m_pressedSelected;
    const auto carry = m_drag.release();
    const bool shown = emptyHand().has_value();
    if (shown && carry) emit setDownAsked(*carry);
    if (clicked) pick(*clicked);
}

void PlanView::abortCarry(const QString& why) {
    m_drag.abort();
    if (!emptyHand()) return;
    emit said(why.isEmpty() ? tr("Back where it stood; nothing was changed.") : why);
}

/// The book holds something new: what is in the hand must still stand where it was picked up.
void PlanView::keepCarry(const Scene& next) {
    if (m_drag.state() == DragMachine::State::Idle) return;
    if (!m_carry) { // pressed, no more
        m_pressedSelected.reset();
        m_drag.abort();
        return;
    }
    for (const OnWay& hive : m_carry->all()) {
        const auto at = next.find(hive.colony);
        if (at && next.hives[*at].at == hive.from) continue;
        const auto was = m_scene.find(hive.colony);
        const QString label = was ? m_scene.hives[*was].label : QString();
        return abortCarry(at ? tr("%1 was carried meanwhile: nothing was changed here.").arg(label)
                             : tr("%1 is no longer there: nothing was carried.").arg(label));
    }
}

bool PlanView::nudgeKey(QKeyEvent* event) {
    const auto asked = wayOfKey(*event);
    if (!asked) return false;
    const core::MmPoint way = *asked;
    if (event->modifiers() & Qt::ControlModifier) {
        scroll(QPointF(-way.x * 60, way.y * 60));
        return true;
    }
    const auto hive = chosenAt();
    if (!hive || m_tool) return true;
    if (!m_carryBarred.isEmpty()) {
        emit said(m_carryBarred);
        return true;
    }
    const int step = event->modifiers() & Qt::ShiftModifier ? 10 : 100;
    const Picked picked{m_scene.hives[*hive].colony, m_scene.hives[*hive].at};
    ensureLayout();
    showCarry(m_drag.nudge(picked, {way.x * step, way.y * step}, pickedWith(picked.colony)));
    m_nudgeDone.start();
    return true;
}

void PlanView::setDrift(std::vector<Drift> drift) {
    if (drift == m_drift) return;
    m_drift = std::move(drift);
    update();
}

void PlanView::drawDrift(QPainter& p) const { paintDrift(p, drift(), m_camera, m_layout, look::coloursOf(*this)); }

void PlanView::drawPreview(QPainter& p) const {
    if (m_carry->yard) return;
    p.save();
    p.translate(m_camera.offset());
    paintCarry(p, m_scene, m_layout, *m_texts, m_camera, *m_carry, m_words, look::coloursOf(*this));
    p.restore();
}

} // namespace ui::plan
