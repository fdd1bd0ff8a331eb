// The hand on the plan: mouse, wheel and keys of PlanView.

#include "ui/plan/curve.h"
#include "ui/plan/ground.h"
#include "ui/plan/plan_view.h"

#include "ui/plan/sprites.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>

#include <cmath>

namespace ui::plan {

namespace {
constexpr double kHitReach = 12; // pixels from a hive's middle that always hit it: 24 across (WCAG 2.2, 2.5.8)
}

std::optional<size_t> PlanView::chosenAt() const { return m_chosen ? m_scene.find(*m_chosen) : std::nullopt; }

std::optional<size_t> PlanView::chosenUnion() const {
    const auto at = chosenAt();
    for (size_t i = 0; at && i < m_scene.unions.size(); ++i)
        if (m_scene.unions[i].moved == *at || m_scene.unions[i].host == *at) return i;
    return std::nullopt;
}

QPointF PlanView::viewPointOf(core::ColonyId colony) const {
    const auto hive = m_scene.find(colony);
    return hive ? m_camera.toView(m_scene.hives[*hive].at) : QPointF(-1, -1);
}

/// On the hive or its label; else the nearest within what a finger or an unsteady hand needs.
std::optional<size_t> PlanView::hiveAt(const QPointF& viewPixel) const {
    const QPointF p = viewPixel - m_camera.offset();
    std::optional<size_t> found;
    double nearest = 1e9;
    for (size_t i = 0; i < m_layout.hives.size() && i < m_scene.hives.size(); ++i) {
        const HivePlace& h = m_layout.hives[i];
        const bool on = h.box.adjusted(-4, -4, 4, 4).contains(p) || h.label.contains(p);
        if (!on && !around(h.centre, kHitReach).contains(p)) continue;
        const double apart = std::hypot(h.centre.x() - p.x(), h.centre.y() - p.y()) + (on ? 0 : 2 * kHitReach);
        if (apart >= nearest) continue;
        nearest = apart;
        found = i;
    }
    return found;
}

std::optional<size_t> PlanView::unionAt(const QPointF& viewPixel) const {
    const double r = signRadius(m_texts->badgeFont()) + 2;
    for (size_t i = 0; i < m_layout.unions.size(); ++i) {
        if (m_layout.unions[i].signHidden) continue;
        const QPointF away = m_layout.unions[i].sign - (viewPixel - m_camera.offset());
        if (std::hypot(away.x(), away.y()) < r) return i;
    }
    return std::nullopt;
}

const StandMark* PlanView::standAt(const QPointF& viewPixel) const {
    for (const StandMark& s : m_scene.stands) {
        const QPointF away = m_camera.toView(s.at) - viewPixel;
        if (std::hypot(away.x(), away.y()) < std::max(9.0, 0.3 * m_magnified * m_camera.pixelsPerMetre)) return &s;
    }
    return nullptr;
}

void PlanView::choose(std::optional<size_t> hive) {
    const auto id = hive ? std::optional(m_scene.hives[*hive].colony) : std::nullopt;
    setChosen(id);
    emit chosen(id);
    if (id && hasFocus()) emit hiveFocused(*id);
}

void PlanView::pick(core::ColonyId colony) {
    if (const auto hive = m_scene.find(colony)) choose(hive);
}

QRect PlanView::boxOf(core::ColonyId colony) {
    ensureLayout();
    const auto hive = m_scene.find(colony);
    if (!hive || *hive >= m_layout.hives.size()) return {};
    return m_layout.hives[*hive].box.translated(m_camera.offset()).toAlignedRect();
}

void PlanView::mousePressEvent(QMouseEvent* event) {
    ensureLayout();
    setDrift({});
    const bool grip = event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && m_spaceHeld);
    if (grip) {
        m_scrollFrom = event->position();
        setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (event->button() != Qt::LeftButton || pressAim(*event) || pressTool(*event)) return;
    if (m_drag.carrying()) setDown(); // a burst of keys is finished by the next press
    const auto hive = hiveAt(event->position());
    const bool adding = event->modifiers() & (Qt::ControlModifier | Qt::ShiftModifier);
    const bool onHive = hive && m_layout.hives[*hive].box.translated(m_camera.offset()).contains(event->position());
    if (const auto sign = unionAt(event->position()); sign && !onHive) return choose(m_scene.unions[*sign].host);
    if (!hive) {
        m_groundPressed = true;
        return m_band.press(event->position(), m_camera, adding);
    }
    if (adding) return toggle(*hive);
    pressHive(*hive, *event);
}

void PlanView::mouseMoveEvent(QMouseEvent* event) {
    if (m_scrollFrom) {
        const QPointF by = event->position() - *m_scrollFrom;
        if (m_groundPressed && by.manhattanLength() < 4) return;
        m_groundPressed = false;
        setCursor(Qt::ClosedHandCursor);
        scroll(by);
        m_scrollFrom = event->position();
        return;
    }
    if (moveBand(*event)) return;
    if (m_drag.state() == DragMachine::State::Idle) {
        if (moveAim(*event) || moveTool(*event)) return;
        const bool over = hiveAt(event->position()) || unionAt(event->position()) || standAt(event->position());
        setCursor(over ? Qt::PointingHandCursor : Qt::ArrowCursor);
        return;
    }
    dragTo(*event);
}

void PlanView::mouseReleaseEvent(QMouseEvent* event) {
    if (m_scrollFrom) {
        if (m_groundPressed && event->button() == Qt::LeftButton) clickGround(*event);
        m_groundPressed = false;
        m_scrollFrom.reset();
        unsetCursor();
        return;
    }
    if (m_band.pressed() && event->button() == Qt::LeftButton) {
        if (m_band.drawn()) return setBandDown();
        endBand();
        m_groundPressed = false;
        return clickGround(*event);
    }
    if (m_aim.gripped()) {
        m_aim.release();
        unsetCursor();
        return showSketch();
    }
    if (event->button() == Qt::LeftButton && !releaseTool(*event)) setDown();
}

void PlanView::clickGround(const QMouseEvent& event) {
    if (m_aim.on()) return m_aim.click(aimedAt(event, m_camera.toPlan(event.position())));
    if (event.modifiers() & (Qt::ControlModifier | Qt::ShiftModifier)) return; // adds nothing
    choose(std::nullopt);
    if (const StandMark* stand = standAt(event.position())) emit standChosen(stand->stand);
}

void PlanView::mouseDoubleClickEvent(QMouseEvent* event) {
    const auto hive = event->button() == Qt::LeftButton ? hiveAt(event->position()) : std::nullopt;
    if (m_aim.on() || m_tool) return mousePressEvent(event); // two quick clicks are two
    if (hive) return emit opened(m_scene.hives[*hive].colony);
    const StandMark* stand = event->button() == Qt::LeftButton ? standAt(event->position()) : nullptr;
    if (stand) emit standOpened(stand->stand);
}

void PlanView::wheelEvent(QWheelEvent* event) {
    const bool fingers = !event->pixelDelta().isNull() && event->phase() != Qt::NoScrollPhase;
    const bool zooming = event->modifiers() & Qt::ControlModifier;
    const QPoint turn = event->angleDelta();
    if (fingers && !zooming) return scroll(event->pixelDelta());
    if (event->modifiers() & (Qt::ShiftModifier | Qt::AltModifier)) {
        const double by = (turn.y() != 0 ? turn.y() : turn.x()) / 2.0;
        return scroll(event->modifiers() & Qt::ShiftModifier ? QPointF(by, 0) : QPointF(0, by));
    }
    zoomAt(std::pow(1.0016, turn.y()), event->position());
}

std::optional<core::MmPoint> PlanView::wayOfKey(const QKeyEvent& event) {
    switch (event.key()) {
    case Qt::Key_Left:
        return core::MmPoint{-1, 0};
    case Qt::Key_Right:
        return core::MmPoint{1, 0};
    case Qt::Key_Up:
        return core::MmPoint{0, 1};
    case Qt::Key_Down:
        return core::MmPoint{0, -1};
    default:
        return std::nullopt;
    }
}

void PlanView::keyPressEvent(QKeyEvent* event) {
    if (aimKey(event) || toolKey(event) || nudgeKey(event)) return;
    const auto hive = chosenAt();
    switch (event->key()) {
    case Qt::Key_Escape:
        if (m_band.pressed()) return endBand();
        if (m_drag.state() != DragMachine::State::Idle) return abortCarry();
        return m_drift.empty() ? choose(std::nullopt) : setDrift({});
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_drag.carrying()) return setDown();
        if (hive) emit opened(m_scene.hives[*hive].colony);
        return;
    case Qt::Key_Home:
        return fit();
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        return zoomIn();
    case Qt::Key_Minus:
        return zoomOut();
    case Qt::Key_Space:
        if (event->modifiers() & Qt::ControlModifier) return keepChosen();
        m_spaceHeld = true;
        return;
    default:
        if (!typedLabel(*event)) QWidget::keyPressEvent(event);
    }
}

void PlanView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) m_spaceHeld = false;
    QWidget::keyReleaseEvent(event);
}

void PlanView::focusInEvent(QFocusEvent* event) {
    m_frameStale = true;
    QWidget::focusInEvent(event);
    const bool byTab = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
    if (byTab && !m_aim.on() && !chosenAt() && !m_scene.hives.empty())
        choose(event->reason() == Qt::TabFocusReason ? size_t{0} : m_scene.hives.size() - 1);
    else if (chosenAt())
        emit hiveFocused(*m_chosen);
}

void PlanView::focusOutEvent(QFocusEvent* event) {
    if (m_drag.state() == DragMachine::State::Nudging)
        setDown(); // what the keys asked for is made, as after a pause
    else
        abortCarry();
    if (m_tool) m_tool->abort();
    if (m_band.pressed()) endBand();
    m_toolPressed = false;
    m_spaceHeld = false;
    m_frameStale = true;
    QWidget::focusOutEvent(event);
}

bool PlanView::focusNextPrevChild(bool next) {
    if (!hasFocus() || m_aim.on()) return QWidget::focusNextPrevChild(next);
    if (m_drag.carrying()) setDown();
    const auto to = neighbourOf(m_scene, chosenAt(), next);
    if (!to) return QWidget::focusNextPrevChild(next);
    walkTo(*to);
    return true;
}

} // namespace ui::plan
