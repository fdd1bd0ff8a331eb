#include "ui/plan/band.h"

#include "ui/plan/paint_hive.h"

#include <QApplication>
#include <QPainter>

namespace ui::plan {

void Band::press(const QPointF& viewPixel, const Camera& camera, bool adding) {
    m_from = camera.toPlan(viewPixel);
    m_pressed = m_now = viewPixel;
    m_drawn = false;
    m_adding = adding;
}

bool Band::moveTo(const QPointF& viewPixel) {
    if (!m_from) return false;
    m_now = viewPixel;
    m_drawn = m_drawn || (m_now - m_pressed).manhattanLength() >= QApplication::startDragDistance();
    return m_drawn;
}

void Band::end() {
    m_from.reset();
    m_drawn = false;
}

QRectF Band::rect(const Camera& camera) const { return QRectF(camera.toView(*m_from), m_now).normalized(); }

std::vector<size_t> Band::holds(const Scene& scene, const Camera& camera) const {
    std::vector<size_t> out;
    if (!m_drawn) return out;
    const QRectF held = rect(camera);
    for (size_t i = 0; i < scene.hives.size(); ++i)
        if (held.contains(camera.toView(scene.hives[i].at))) out.push_back(i);
    return out;
}

void Band::paint(QPainter& p, const Layout& layout, const std::vector<size_t>& held, const Camera& camera,
                 const look::Colours& c) const {
    if (!m_drawn) return;
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    p.translate(camera.offset());
    for (const size_t i : held)
        if (i < layout.hives.size()) paintFrame(p, layout.hives[i], Emphasis::Chosen, c);
    p.translate(-camera.offset());
    QColor veil = c.planned;
    veil.setAlpha(26);
    p.setBrush(veil);
    p.setPen(QPen(c.planned, 1.2, Qt::DashLine));
    p.drawRect(rect(camera));
    p.restore();
}

} // namespace ui::plan
