#include "ui/plan/drag_machine.h"

#include <algorithm>
#include <utility>

namespace ui::plan {

bool Carry::blocked() const {
    return blockedBy ||
           std::any_of(others.begin(), others.end(), [](const OnWay& h) { return h.blockedBy.has_value(); });
}

std::vector<OnWay> Carry::all() const {
    std::vector<OnWay> out{*this};
    out.insert(out.end(), others.begin(), others.end());
    return out;
}

DragMachine::DragMachine(Ground ground, double threshold) : m_ground(std::move(ground)), m_threshold(threshold) {}

void DragMachine::pickUp(const Picked& hive, std::span<const Picked> others) {
    m_carry = {};
    static_cast<OnWay&>(m_carry) = {hive.colony, hive.stands, hive.stands, {}};
    m_carried = {hive.colony};
    for (const Picked& p : others) {
        if (p.colony == hive.colony) continue;
        m_carry.others.push_back({p.colony, p.stands, p.stands, {}});
        m_carried.push_back(p.colony);
    }
}

void DragMachine::press(const Picked& hive, const QPointF& viewPixel, std::span<const Picked> others) {
    m_state = State::Pressed;
    m_pressedAt = viewPixel;
    m_pressedPlan = m_ground.toPlan(viewPixel);
    pickUp(hive, others);
}

Carry DragMachine::carryTo(core::MmPoint to) {
    const auto setAt = [this](OnWay& hive, core::MmPoint at) {
        hive.to = at;
        hive.blockedBy = at == hive.from ? std::nullopt : m_ground.inTheWay(at, m_carried);
    };
    m_carry.yard.reset();
    setAt(m_carry, to);
    for (OnWay& hive : m_carry.others) setAt(hive, hive.from + (to - m_carry.from));
    return m_carry;
}

std::optional<Carry> DragMachine::move(const QPointF& viewPixel, bool snapping, bool swap) {
    if (m_state == State::Pressed) {
        const QPointF gone = viewPixel - m_pressedAt;
        if (gone.manhattanLength() < m_threshold) return std::nullopt;
        m_state = State::Dragging;
    }
    if (m_state == State::Outside) m_state = State::Dragging;
    if (m_state != State::Dragging) return std::nullopt;
    m_carry.swap = swap && !m_carry.several();
    const core::MmPoint raw = m_carry.from + (m_ground.toPlan(viewPixel) - m_pressedPlan); // keeps the grip
    return carryTo(snapping ? m_ground.snap(raw, m_carried) : raw);
}

std::optional<Carry> DragMachine::moveOutside(std::optional<core::YardId> yard) {
    if (m_state == State::Idle || m_state == State::Nudging) return std::nullopt;
    m_state = State::Outside;
    carryTo(m_carry.from);
    m_carry.swap = false;
    m_carry.yard = yard;
    return m_carry;
}

Carry DragMachine::nudge(const Picked& hive, core::MmPoint by, std::span<const Picked> others) {
    if (m_state != State::Nudging || m_carry.colony != hive.colony) pickUp(hive, others);
    m_state = State::Nudging;
    return carryTo(m_carry.to + by);
}

std::optional<Carry> DragMachine::release() {
    const State was = std::exchange(m_state, State::Idle);
    if (was == State::Idle || was == State::Pressed || m_carry.goesNowhere()) return std::nullopt;
    return m_carry;
}

bool DragMachine::abort() { return std::exchange(m_state, State::Idle) != State::Idle; }

} // namespace ui::plan
