#include "ui/plan/drag_machine.h"

#include <utility>

namespace ui::plan {

DragMachine::DragMachine(Ground ground, double threshold) : m_ground(std::move(ground)), m_threshold(threshold) {}

void DragMachine::press(core::ColonyId colony, core::MmPoint stands, const QPointF& viewPixel) {
    m_state = State::Pressed;
    m_pressedAt = viewPixel;
    m_pressedPlan = m_ground.toPlan(viewPixel);
    m_carry = {colony, stands, stands, {}};
}

Carry DragMachine::carryTo(core::MmPoint to) {
    m_carry.to = to;
    m_carry.blockedBy = to == m_carry.from ? std::nullopt : m_ground.inTheWay(to, m_carry.colony);
    return m_carry;
}

std::optional<Carry> DragMachine::move(const QPointF& viewPixel, bool snapping) {
    if (m_state == State::Pressed) {
        const QPointF gone = viewPixel - m_pressedAt;
        if (gone.manhattanLength() < m_threshold) return std::nullopt;
        m_state = State::Dragging;
    }
    if (m_state != State::Dragging) return std::nullopt;
    const core::MmPoint raw = m_carry.from + (m_ground.toPlan(viewPixel) - m_pressedPlan); // keeps the grip
    return carryTo(snapping ? m_ground.snap(raw, m_carry.colony) : raw);
}

Carry DragMachine::nudge(core::ColonyId colony, core::MmPoint stands, core::MmPoint by) {
    if (m_state != State::Nudging || m_carry.colony != colony) m_carry = {colony, stands, stands, {}};
    m_state = State::Nudging;
    return carryTo(m_carry.to + by);
}

std::optional<Carry> DragMachine::release() {
    const State was = std::exchange(m_state, State::Idle);
    if (was != State::Dragging && was != State::Nudging) return std::nullopt;
    if (m_carry.to == m_carry.from) return std::nullopt;
    return m_carry;
}

bool DragMachine::abort() { return std::exchange(m_state, State::Idle) != State::Idle; }

} // namespace ui::plan
