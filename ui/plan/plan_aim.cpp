// What is to come on the plan: sketch and aim of PlanView.

#include "ui/plan/ground.h"
#include "ui/plan/plan_view.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>

#include <cmath>

namespace ui::plan {

namespace {
constexpr double kComfort = 48; // pixels that a sketch keeps from the edges
}

void PlanView::setSketch(Sketch sketch) {
    const bool was = m_sketch.sketch().empty();
    const QSizeF before = m_sketch.metres().size();
    m_sketch.set(std::move(sketch), font());
    const bool follows = m_aim.on() && m_aim.way() == Aim::Way::Follows;
    const double magnified = follows ? m_magnified : magnificationNow();
    if (magnified != m_magnified) {
        m_magnified = magnified;
        m_routed.reset();
        stale();
    }
    const QSizeF now = m_sketch.metres().size();
    const bool another =
        !now.isEmpty() && std::abs(now.width() - before.width()) + std::abs(now.height() - before.height()) > 1e-6;
    if (!follows && m_fitted && another && !m_sketch.sketch().hives.empty())
        fit(); // it grew or shrank: the whole is shown as large as may be
    else if (!follows && !m_aim.gripped())
        showSketch();
    if (was != m_sketch.sketch().empty()) stale(); // the text of an empty yard makes room
    tellSketch();
    update();
}

/// For those who do not see it.
void PlanView::tellSketch() {
    if (m_sketch.sketch().hives.empty()) return;
    const Ghost& first = m_sketch.sketch().hives.front();
    const QString text =
        (first.refused ? tr("%1 cannot stand at %2 m east, %3 m north") : tr("%1 at %2 m east, %3 m north"))
            .arg(first.mark.label, core::metresText({first.mark.at.x}), core::metresText({first.mark.at.y}));
    if (text == accessibleDescription()) return;
    setAccessibleDescription(text);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

/// As it will be once the sketch is made.
double PlanView::magnificationNow() const {
    if (m_sketch.sketch().hives.empty()) return magnification(m_scene);
    Scene all = m_scene;
    for (const Ghost& g : m_sketch.sketch().hives) all.hives.push_back(g.mark);
    return magnification(all);
}

/// All of the sketch in view: the yard is fitted anew where it is not.
void PlanView::showSketch() {
    const QRectF metres = m_sketch.metres();
    if (metres.isEmpty()) return;
    const QRectF needed(
        m_camera.toView({static_cast<qint32>(metres.left() * 1000), static_cast<qint32>(-metres.top() * 1000)}),
        metres.size() * m_camera.pixelsPerMetre);
    const QRectF comfortable = QRectF(rect()).adjusted(kComfort, kComfort, -kComfort, -kComfort);
    if (!comfortable.contains(needed)) fit();
}

core::MmPoint PlanView::aimedAt(const QMouseEvent& event, core::MmPoint at) const {
    if (event.modifiers() & Qt::AltModifier) return at;
    return snapped(m_scene, at, {}, static_cast<int>(std::min(8000 / m_camera.pixelsPerMetre, 400.0)));
}

/// True: the press was the aim's.
bool PlanView::pressAim(const QMouseEvent& event) {
    if (!m_aim.on() || event.button() != Qt::LeftButton) return false;
    if (m_aim.way() == Aim::Way::Stays) {
        const QPointF gate = m_sketch.sketch().gate ? m_camera.toView(*m_sketch.sketch().gate) : QPointF(-1e6, -1e6);
        const bool onGate = QRectF(gate - QPointF(28, 22), QSizeF(56, 44)).contains(event.position());
        if (onGate || m_sketch.ghostAt(event.position(), m_camera, m_magnified)) {
            m_aim.grip(m_camera.toPlan(event.position()));
            setCursor(Qt::ClosedHandCursor);
            return true;
        }
        if (hiveAt(event.position())) return false;
    }
    m_groundPressed = true; // a click aims there, a drag scrolls
    m_scrollFrom = event.position();
    return true;
}

bool PlanView::moveAim(const QMouseEvent& event) {
    if (!m_aim.on()) return false;
    if (m_aim.gripped()) {
        m_aim.drag(aimedAt(event, m_aim.draggedTo(m_camera.toPlan(event.position()))));
        return true;
    }
    if (m_aim.way() == Aim::Way::Follows) {
        m_aim.hover(aimedAt(event, m_camera.toPlan(event.position())));
        setCursor(Qt::CrossCursor);
        return true;
    }
    const bool over = m_sketch.ghostAt(event.position(), m_camera, m_magnified).has_value();
    if (over) setCursor(Qt::OpenHandCursor);
    return over;
}

bool PlanView::aimKey(QKeyEvent* event) {
    if (!m_aim.on()) return false;
    const int step = event->modifiers() & Qt::ShiftModifier ? 10 : 100;
    switch (event->key()) {
    case Qt::Key_Escape:
        m_aim.escape();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        m_aim.enter();
        return true;
    default:
        break;
    }
    const auto way = wayOfKey(*event);
    if (!way || event->modifiers() & Qt::ControlModifier) return false;
    m_aim.nudge({way->x * step, way->y * step});
    return true;
}

} // namespace ui::plan
