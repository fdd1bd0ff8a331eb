#pragma once

#include "core/base/id.h"
#include "core/base/quantity.h"

#include <QPointF>

#include <functional>
#include <optional>

namespace ui::plan {

/// What the machine asks of the ground that a hive is carried over.
struct Ground {
    std::function<core::MmPoint(const QPointF& viewPixel)> toPlan;
    /// Where a hive set down near `at` would stand; the same point where nothing is near.
    std::function<core::MmPoint(core::MmPoint at, core::ColonyId carried)> snap;
    /// Another hive that stands there.
    std::function<std::optional<core::ColonyId>(core::MmPoint at, core::ColonyId carried)> inTheWay;
};

/// A hive on its way.
struct Carry {
    core::ColonyId colony;
    core::MmPoint from;
    core::MmPoint to;
    std::optional<core::ColonyId> blockedBy; ///< it cannot be set down there
    friend bool operator==(const Carry&, const Carry&) = default;
};

/// The drag of one hive, without widgets: the view feeds it points and keys and shows what it returns. Nothing is
/// written here; release() gives the one carry to make.
class DragMachine {
public:
    enum class State { Idle, Pressed, Dragging, Nudging };

    /// `threshold`: pixels that a press may wander and still be a click.
    DragMachine(Ground ground, double threshold);

    State state() const { return m_state; }
    /// Under way, by mouse or keys.
    bool carrying() const { return m_state == State::Dragging || m_state == State::Nudging; }

    void press(core::ColonyId colony, core::MmPoint stands, const QPointF& viewPixel);
    /// nullopt while it is still a click, or nothing is pressed. `snapping` off: exactly where the pointer is.
    std::optional<Carry> move(const QPointF& viewPixel, bool snapping);
    /// The keys: `by` from where it was last; starts a carry where none is under way.
    Carry nudge(core::ColonyId colony, core::MmPoint stands, core::MmPoint by);
    /// Sets it down: the carry, or nullopt for a click and for a hive brought back to where it stood.
    std::optional<Carry> release();
    /// Escape, focus lost, record gone: back to where it was. True where something was under way.
    bool abort();

private:
    Carry carryTo(core::MmPoint to);

    Ground m_ground;
    double m_threshold;
    State m_state = State::Idle;
    QPointF m_pressedAt;
    core::MmPoint m_pressedPlan;
    Carry m_carry;
};

} // namespace ui::plan
