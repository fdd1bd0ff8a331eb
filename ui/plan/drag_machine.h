#pragma once

#include "core/base/id.h"
#include "core/base/quantity.h"

#include <QPointF>

#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace ui::plan {

/// What the machine asks of the ground that hives are carried over.
struct Ground {
    std::function<core::MmPoint(const QPointF& viewPixel)> toPlan;
    /// Where a hive set down near `at` would stand; the same point where nothing is near. `carried` are in the hand.
    std::function<core::MmPoint(core::MmPoint at, std::span<const core::ColonyId> carried)> snap;
    /// A hive that stands there and is none of `carried`.
    std::function<std::optional<core::ColonyId>(core::MmPoint at, std::span<const core::ColonyId> carried)> inTheWay;
};

/// A hive that is picked up, and where it stands.
struct Picked {
    core::ColonyId colony;
    core::MmPoint stands;
    friend bool operator==(const Picked&, const Picked&) = default;
};

/// A hive on its way.
struct OnWay {
    core::ColonyId colony;
    core::MmPoint from;
    core::MmPoint to;
    std::optional<core::ColonyId> blockedBy; ///< it cannot be set down there
    friend bool operator==(const OnWay&, const OnWay&) = default;
};

/// Hives in the hand.
struct Carry : OnWay {                ///< the one that was gripped
    std::vector<OnWay> others;        ///< those that come with it, as far from it as they stood
    bool swap = false;                ///< on a hive: to change places with it
    std::optional<core::YardId> yard; ///< of a list outside the drawing, that they are held over; `to` is `from`
    friend bool operator==(const Carry&, const Carry&) = default;

    bool several() const { return !others.empty(); }
    bool blocked() const;
    bool goesNowhere() const { return to == from && !yard; }
    std::vector<OnWay> all() const; ///< the gripped one first
};

/// The drag of hives, without widgets: the view feeds it points and keys and shows what it returns. Nothing is written
/// here; release() gives the one carry to make.
class DragMachine {
public:
    enum class State { Idle, Pressed, Dragging, Outside, Nudging };

    /// `threshold`: pixels that a press may wander and still be a click.
    DragMachine(Ground ground, double threshold);

    State state() const { return m_state; }
    /// Under way, by mouse or keys.
    bool carrying() const { return m_state != State::Idle && m_state != State::Pressed; }

    /// `others` come with it.
    void press(const Picked& hive, const QPointF& viewPixel, std::span<const Picked> others = {});
    /// nullopt while it is still a click, or nothing is pressed. `snapping` off: exactly where the pointer is. `swap`:
    /// set down on a hive it changes places with it.
    std::optional<Carry> move(const QPointF& viewPixel, bool snapping, bool swap = false);
    /// The pointer has left the drawing, for a yard or for nothing: there they stay where they stood. nullopt as of
    /// move().
    std::optional<Carry> moveOutside(std::optional<core::YardId> yard);
    /// The keys: `by` from where they were last; starts a carry where none is under way.
    Carry nudge(const Picked& hive, core::MmPoint by, std::span<const Picked> others = {});
    /// Sets them down: the carry, or nullopt for a click and for hives brought back to where they stood.
    std::optional<Carry> release();
    /// Escape, focus lost, record gone: back to where they were. True where something was under way.
    bool abort();

private:
    void pickUp(const Picked& hive, std::span<const Picked> others);
    Carry carryTo(core::MmPoint to);

    Ground m_ground;
    double m_threshold;
    State m_state = State::Idle;
    QPointF m_pressedAt;
    core::MmPoint m_pressedPlan;
    std::vector<core::ColonyId> m_carried;
    Carry m_carry;
};

} // namespace ui::plan
