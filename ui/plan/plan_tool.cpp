// A tool in the hand on PlanView.

#include "ui/plan/plan_view.h"

#include <QKeyEvent>
#include <QMouseEvent>

namespace ui::plan {

void PlanView::setTool(Tool* tool) {
    if (tool == m_tool) return;
    abortCarry();
    if (m_tool) m_tool->abort();
    m_tool = tool;
    m_toolPressed = false;
    unsetCursor();
    update();
}

Touch PlanView::touchAt(const QPointF& viewPixel, Qt::KeyboardModifiers modifiers) const {
    const auto hive = hiveAt(viewPixel);
    const StandMark* stand = hive ? nullptr : standAt(viewPixel);
    return {viewPixel, m_camera.toPlan(viewPixel), modifiers,
            hive ? std::optional(m_scene.hives[*hive].colony) : std::nullopt,
            stand ? std::optional(stand->stand) : std::nullopt};
}

bool PlanView::pressTool(const QMouseEvent& event) {
    m_toolPressed = m_tool && m_tool->press(touchAt(event.position(), event.modifiers()));
    if (m_toolPressed) update();
    return m_toolPressed;
}

bool PlanView::moveTool(const QMouseEvent& event) {
    if (!m_tool) return false;
    const Touch at = touchAt(event.position(), event.modifiers());
    if (m_toolPressed)
        m_tool->drag(at);
    else
        m_tool->hover(at);
    setCursor(m_tool->cursor(at));
    update();
    return true;
}

bool PlanView::releaseTool(const QMouseEvent& event) {
    if (!m_toolPressed) return false;
    m_toolPressed = false;
    m_tool->release(touchAt(event.position(), event.modifiers()));
    update();
    return true;
}

bool PlanView::toolKey(QKeyEvent* event) {
    if (!m_tool || !m_tool->key(*event)) return false;
    update();
    return true;
}

} // namespace ui::plan
