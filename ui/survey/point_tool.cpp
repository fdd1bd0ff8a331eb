#include "ui/survey/point_tool.h"

#include "core/edit/survey.h"
#include "ui/look/words.h"
#include "ui/plan/paint_ground.h"
#include "ui/survey/paint_marks.h"

namespace ui::survey {

void PointTool::aim(core::MmPoint at, bool byKeys) {
    const bool another = !m_aiming || at != m_at || byKeys;
    m_at = at;
    m_aiming = true;
    m_byKeys = byKeys;
    if (another) aimed();
    m_site.plan().update();
}

bool PointTool::press(const plan::Touch& at) {
    m_down = true;
    aim(snappedAt(at), false);
    return true;
}

void PointTool::drag(const plan::Touch& at) {
    if (m_down) aim(snappedAt(at), false);
}

void PointTool::release(const plan::Touch& at) {
    if (!m_down) return; // given up meanwhile
    m_down = false;
    take(snappedAt(at));
    m_site.plan().update();
}

void PointTool::hover(const plan::Touch& at) { aim(snappedAt(at), false); }

bool PointTool::key(QKeyEvent& event) {
    if (const auto step = stepOf(event)) {
        aim((m_aiming ? m_at : start()) + *step, true);
        return true;
    }
    if (!isEnter(event)) return false;
    if (!m_aiming) aim(start(), true);
    take(m_at);
    m_site.plan().update();
    return true;
}

void PointTool::paintAim(QPainter& p, const plan::Camera& camera, const look::Colours& c) const {
    if (m_aiming && m_byKeys) paintCross(p, camera.toView(m_at), c);
}

// Measure.

void MeasureTool::begin() {
    m_site.say(tr("Measure: click two points, or move the cross with the arrow keys and press Enter twice."));
}

core::MmPoint MeasureTool::start() const {
    const auto picked = m_site.picked();
    return picked.empty() ? m_site.scene().gate : picked.front().at;
}

void MeasureTool::take(core::MmPoint at) {
    if (!m_from || m_to) {
        m_from = at;
        m_to.reset();
        return m_site.say(tr("From here to where?"));
    }
    m_to = at;
    tell(at);
}

void MeasureTool::aimed() {
    if (m_from && !m_to) tell(at());
}

void MeasureTool::tell(core::MmPoint to) const {
    m_site.say(tr("Measured: %1.").arg(look::wayText(*m_from, to, m_site.unit())));
}

void MeasureTool::abort() {
    m_from.reset();
    m_to.reset();
    stopAiming();
    m_site.plan().update();
}

void MeasureTool::paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const {
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    const auto to = m_to ? m_to : m_from && aiming() ? std::optional(at()) : std::nullopt;
    if (m_from && to && *m_from != *to)
        paintDimension(p, camera.toView(*m_from), camera.toView(*to), look::distanceOf(*m_from, *to, m_site.unit()), c);
    else if (m_from)
        paintHandle(p, camera.toView(*m_from), true, c);
    paintAim(p, camera, c);
    p.restore();
}

// Gate.

void GateTool::begin() {
    m_site.say(tr("Gate: click where one comes in, or move the cross with the arrow keys and press Enter."));
}

void GateTool::aimed() {
    m_site.say(tr("Gate: %1 from where it is drawn.").arg(look::wayText(m_site.scene().gate, at(), m_site.unit())));
}

void GateTool::take(core::MmPoint at) {
    stopAiming();
    if (const auto yard = m_site.yard())
        m_site.save(tr("the drawing"),
                    [=](const core::edit::EditContext& c) { return core::edit::putGate(c, *yard, at); });
}

void GateTool::paint(QPainter& p, const plan::Camera& camera, const look::Colours& c) const {
    if (!aiming()) return;
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    look::Colours blue = c;
    blue.ink = blue.quiet = c.planned;
    plan::paintGate(p, camera, at(), p.font(), blue);
    paintAim(p, camera, c);
    p.restore();
}

} // namespace ui::survey
