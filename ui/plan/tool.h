#pragma once

#include "core/base/id.h"
#include "core/base/quantity.h"
#include "ui/look/colours.h"
#include "ui/plan/camera.h"

#include <QCursor>
#include <QPointF>

#include <optional>

class QKeyEvent;
class QPainter;

namespace ui::plan {

/// Where the pointer is on the plan.
struct Touch {
    QPointF pixel; ///< of the view
    core::MmPoint ground;
    Qt::KeyboardModifiers modifiers;
    std::optional<core::ColonyId> hive; ///< under it
    std::optional<core::StandId> stand; ///< an empty one under it
};

/// What is in the hand instead of the hand that carries hives. Mouse and keys of the plan go to it first; scrolling and
/// zooming stay the plan's own. Lives with its owner, longer than it is in the hand.
class Tool {
public:
    virtual ~Tool() = default;

    /// True: the press is the tool's, and so are the moves and the release that follow.
    virtual bool press(const Touch& at) = 0;
    virtual void drag(const Touch& at) = 0;
    virtual void release(const Touch& at) = 0;
    virtual void hover(const Touch& at) = 0; ///< no button is down
    /// True: the key was the tool's.
    virtual bool key(QKeyEvent& event) = 0;
    /// Focus lost, another scene, another tool: what is under way is given up, and nothing written.
    virtual void abort() = 0;
    virtual QCursor cursor(const Touch& at) const = 0;
    /// Over the yard, in the view's pixels.
    virtual void paint(QPainter& p, const Camera& camera, const look::Colours& c) const = 0;
};

} // namespace ui::plan
