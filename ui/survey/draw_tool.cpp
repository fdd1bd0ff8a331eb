#include "core/edit/survey.h"
#include "core/model/fixed_shape.h"
#include "ui/look/words.h"
#include "ui/plan/paint_fixed.h"
#include "ui/survey/paint_marks.h"
#include "ui/survey/point_tool.h"

#include <algorithm>
#include <cmath>

namespace ui::survey {

namespace {

constexpr int kUsualCrownMm = 1500;

int apart(core::MmPoint a, core::MmPoint b) {
    return static_cast<int>(std::lround(std::sqrt(static_cast<double>(core::squaredDistance(a, b)))));
}

} // namespace

void DrawTool::setKind(core::FixedKind kind) {
    abort();
    m_kind = kind;
}

void DrawTool::begin() {
    const QString word = plan::fixedWord(m_kind);
    switch (m_kind) {
    case core::FixedKind::Tree:
        return m_site.say(tr("Draw %1: click its trunk, then where its crown ends.").arg(word));
    case core::FixedKind::Shed:
        return m_site.say(tr("Draw %1: click two corners of one side, then the other side.").arg(word));
    default:
        return m_site.say(
            tr("Draw %1: click point after point; Enter or a double click ends it, Backspace takes a point back.")
                .arg(word));
    }
}

void DrawTool::take(core::MmPoint at) {
    const bool again = !m_points.empty() && m_points.back() == at;
    if (again && m_kind != core::FixedKind::Shed) return finish();
    if (again) return;
    m_points.push_back(at);
    const bool whole = (m_kind == core::FixedKind::Tree && m_points.size() == 2) ||
                       (m_kind == core::FixedKind::Shed && m_points.size() == 3);
    if (whole) return finish();
    m_site.say(tr("%1, points so far: %2.").arg(plan::fixedWord(m_kind)).arg(m_points.size()));
}

void DrawTool::aimed() {
    if (m_points.empty()) return;
    m_site.say(tr("%1: %2.").arg(plan::fixedWord(m_kind), look::wayText(m_points.back(), at(), m_site.unit())));
}

bool DrawTool::key(QKeyEvent& event) {
    if (event.key() == Qt::Key_Backspace && !m_points.empty()) {
        m_points.pop_back();
        m_site.say(tr("%1, points so far: %2.").arg(plan::fixedWord(m_kind)).arg(m_points.size()));
        return true;
    }
    return PointTool::key(event);
}

/// What the points make so far, with the one that is aimed at.
plan::FixedMark DrawTool::drawn(bool withAim) const {
    plan::FixedMark mark;
    mark.kind = m_kind;
    mark.points = m_points;
    if (withAim && aiming() && (m_points.empty() || m_points.back() != at())) mark.points.push_back(at());
    if (m_kind == core::FixedKind::Tree) {
        mark.radiusMm = mark.points.size() > 1 ? std::clamp(apart(mark.points[0], mark.points[1]), core::kLeastRadiusMm,
                                                            core::kMostRadiusMm)
                                               : kUsualCrownMm;
        if (mark.points.size() > 1) mark.points.pop_back();
    }
    if (m_kind == core::FixedKind::Shed && mark.points.size() == 3)
        mark.points = core::rectangleOf(mark.points[0], mark.points[1], mark.points[2]);
    return mark;
}

void DrawTool::finish() {
    if (!m_site.yard() || m_points.empty()) return;
    const plan::FixedMark mark = drawn(false);
    core::FixedThing thing;
    thing.yard = *m_site.yard();
    thing.kind = mark.kind;
    thing.points = mark.points;
    if (mark.kind == core::FixedKind::Tree) thing.radius = core::Millimetres{mark.radiusMm};
    if (m_site.save(tr("the drawing"),
                    [=](const core::edit::EditContext& c) { return core::edit::addFixedThing(c, thing); }))
        m_points.clear();
    stopAiming();
    m_site.plan().update();
}

void DrawTool::abort() {
    if (!m_points.empty()) m_site.say(tr("Nothing was drawn."));
    m_points.clear();
    stopAiming();
    m_site.plan().update();
}

void DrawTool::paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const {
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    if (!m_points.empty()) {
        const plan::FixedMark mark = drawn(true);
        const bool begun = mark.kind == core::FixedKind::Tree || mark.points.size() >= 3 ||
                           (mark.points.size() == 2 && !core::isArea(mark.kind));
        if (begun) plan::paintFixedMark(p, mark, camera, c);
        if (aiming() && m_points.back() != at()) {
            p.setPen(QPen(c.planned, 1.2, Qt::DashLine));
            p.drawLine(camera.toView(m_points.back()), camera.toView(at()));
            paintBubble(p, camera.toView(at()) - QPointF(0, 14), look::distanceOf(m_points.back(), at(), m_site.unit()),
                        c);
        }
        for (const core::MmPoint point : m_points) paintHandle(p, camera.toView(point), true, c);
    }
    paintAim(p, camera, c);
    p.restore();
}

} // namespace ui::survey
