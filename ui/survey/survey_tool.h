#pragma once

#include "ui/plan/tool.h"
#include "ui/survey/site.h"

#include <QKeyEvent>

namespace ui::survey {

/// A tool of the survey; does nothing by itself.
class SurveyTool : public plan::Tool {
public:
    explicit SurveyTool(Site& site) : m_site(site) {}

    /// In the hand from now on: says what it does.
    virtual void begin() = 0;
    virtual bool busy() const = 0; ///< something is under way

    bool press(const plan::Touch&) override { return false; }
    void drag(const plan::Touch&) override {}
    void release(const plan::Touch&) override {}
    void hover(const plan::Touch&) override {}
    QCursor cursor(const plan::Touch&) const override { return Qt::ArrowCursor; }

protected:
    static constexpr int kBurstMs = 700; ///< presses of a key so close together are one edit

    /// Arrow keys as a way: 10 cm, with Shift 1 cm; nothing with Ctrl, which scrolls.
    static std::optional<core::MmPoint> stepOf(const QKeyEvent& event) {
        if (event.modifiers() & Qt::ControlModifier) return std::nullopt;
        const qint32 step = event.modifiers() & Qt::ShiftModifier ? 10 : 100;
        switch (event.key()) {
        case Qt::Key_Left:
            return core::MmPoint{-step, 0};
        case Qt::Key_Right:
            return core::MmPoint{step, 0};
        case Qt::Key_Up:
            return core::MmPoint{0, step};
        case Qt::Key_Down:
            return core::MmPoint{0, -step};
        default:
            return std::nullopt;
        }
    }
    static bool isEnter(const QKeyEvent& event) {
        return event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    }

    Site& m_site;
};

} // namespace ui::survey
