#pragma once

#include "ui/survey/survey_tool.h"

#include <QCoreApplication>

namespace ui::survey {

/// A tool that takes points of the ground, by clicks, or by a cross that arrow keys move and Enter puts down.
class PointTool : public SurveyTool {
public:
    using SurveyTool::SurveyTool;

    bool press(const plan::Touch& at) override;
    void drag(const plan::Touch& at) override;
    void release(const plan::Touch& at) override;
    void hover(const plan::Touch& at) override;
    bool key(QKeyEvent& event) override;
    QCursor cursor(const plan::Touch&) const override { return Qt::CrossCursor; }

protected:
    virtual void take(core::MmPoint at) = 0;
    virtual void aimed() = 0;                ///< at() is another
    virtual core::MmPoint start() const = 0; ///< of the cross
    core::MmPoint at() const { return m_at; }
    bool aiming() const { return m_aiming; }
    void paintAim(QPainter& p, const plan::Camera& camera, const look::Colours& c) const;
    void stopAiming() { m_aiming = m_byKeys = m_down = false; }
    virtual core::MmPoint snappedAt(const plan::Touch& at) const { return m_site.snappedToHive(at); }

private:
    void aim(core::MmPoint at, bool byKeys);

    core::MmPoint m_at;
    bool m_aiming = false; ///< the pointer or the cross is somewhere
    bool m_byKeys = false;
    bool m_down = false;
};

/// Two points: how far they are from each other. Nothing is written.
class MeasureTool : public PointTool {
    Q_DECLARE_TR_FUNCTIONS(MeasureTool)
public:
    using PointTool::PointTool;
    void begin() override;
    bool busy() const override { return m_from.has_value(); }
    void abort() override;
    void paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const override;

protected:
    void take(core::MmPoint at) override;
    void aimed() override;
    core::MmPoint start() const override;

private:
    void tell(core::MmPoint to) const;

    std::optional<core::MmPoint> m_from;
    std::optional<core::MmPoint> m_to;
};

/// Where one comes in.
class GateTool : public PointTool {
    Q_DECLARE_TR_FUNCTIONS(GateTool)
public:
    using PointTool::PointTool;
    void begin() override;
    bool busy() const override { return false; }
    void abort() override { stopAiming(); }
    void paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const override;

protected:
    void take(core::MmPoint at) override;
    void aimed() override;
    core::MmPoint start() const override { return m_site.scene().gate; }
};

/// A new fixed thing, point by point: Enter or a double click ends it, Backspace takes a point back, Escape all.
class DrawTool : public PointTool {
    Q_DECLARE_TR_FUNCTIONS(DrawTool)
public:
    using PointTool::PointTool;
    void setKind(core::FixedKind kind);
    core::FixedKind kind() const { return m_kind; }
    void begin() override;
    bool busy() const override { return !m_points.empty(); }
    bool key(QKeyEvent& event) override;
    void abort() override;
    void paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const override;

protected:
    void take(core::MmPoint at) override;
    void aimed() override;
    core::MmPoint start() const override { return m_points.empty() ? m_site.scene().gate : m_points.back(); }

private:
    void finish();
    plan::FixedMark drawn(bool withAim) const;

    core::FixedKind m_kind = core::FixedKind::Hedge;
    std::vector<core::MmPoint> m_points;
};

} // namespace ui::survey
