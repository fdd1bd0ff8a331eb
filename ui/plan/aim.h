#pragma once

#include "core/base/quantity.h"

#include <QObject>

namespace ui::plan {

/// A point of the yard in the hand: where a hive, the first of a row, or the gate is to stand. The plan feeds it mouse
/// and keys, in millimetres; what is drawn there and what is made of it is its owner's.
class Aim : public QObject {
    Q_OBJECT
public:
    enum class Way {
        Follows, ///< the pointer; a click puts it down, again and again
        Stays    ///< until it is dragged, or the ground is clicked
    };
    using QObject::QObject;

    void start(Way way, core::MmPoint at);
    void stop();
    bool on() const { return m_on; }
    Way way() const { return m_way; }
    core::MmPoint at() const { return m_at; }
    /// Typed elsewhere: no signal.
    void moveTo(core::MmPoint at) { m_at = at; }

    // Of the plan. `at` is snapped already.
    void hover(core::MmPoint at);
    void click(core::MmPoint at);
    void grip(core::MmPoint under); ///< pressed on what is drawn there
    bool gripped() const { return m_gripped; }
    /// Where the point would be with the grip kept, for snapping.
    core::MmPoint draggedTo(core::MmPoint under) const { return m_gripAt + (under - m_gripUnder); }
    void drag(core::MmPoint at);
    void release() { m_gripped = false; }
    void nudge(core::MmPoint by);
    void enter();
    void escape();

signals:
    void moved(core::MmPoint at);
    void put(core::MmPoint at);
    void left(); ///< Escape

private:
    void go(core::MmPoint at);

    bool m_on = false;
    Way m_way = Way::Follows;
    bool m_gripped = false;
    core::MmPoint m_at;
    core::MmPoint m_gripUnder;
    core::MmPoint m_gripAt;
};

} // namespace ui::plan
