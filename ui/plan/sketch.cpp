#include "ui/plan/sketch.h"

#include "ui/plan/paint_ground.h"

#include <QPainter>

#include <algorithm>

namespace ui::plan {

namespace {

/// The entrance as a notch outside the outline, as of a hive that stands.
void paintNotch(QPainter& p, const HivePlace& h, int headingDeg, const QColor& colour) {
    p.save();
    p.translate(h.centre);
    p.rotate(headingDeg - 180);
    p.setPen(Qt::NoPen);
    p.setBrush(colour);
    p.drawConvexPolygon(entranceOf(h.size));
    p.restore();
}

void paintGhostHive(QPainter& p, const Ghost& g, const HivePlace& h, Detail detail, const look::Colours& c) {
    const QColor line = g.refused ? c.warn : c.planned;
    QColor ground = c.paper;
    ground.setAlphaF(0.8f);
    const QPolygonF outline = outlineOf(h.centre, h.size, g.mark.headingDeg);
    p.setPen(QPen(line, detail == Detail::Combs ? 1.8 : 1.2, detail == Detail::Dot ? Qt::SolidLine : Qt::DashLine));
    p.setBrush(ground);
    p.drawConvexPolygon(outline);
    if (g.refused) {
        p.drawLine(outline[0], outline[2]);
        p.drawLine(outline[1], outline[3]);
    }
    if (detail != Detail::Dot) paintNotch(p, h, g.mark.headingDeg, line);
}

void paintSketchGate(QPainter& p, const Camera& camera, core::MmPoint gate, const QFont& font, look::Colours c) {
    c.ink = c.planned;
    c.quiet = c.planned;
    paintGate(p, camera, gate, font, c);
}

} // namespace

SketchLayer::SketchLayer() = default;
SketchLayer::~SketchLayer() = default;

void SketchLayer::set(Sketch sketch, const QFont& font) {
    m_sketch = std::move(sketch);
    m_scene.hives.clear();
    for (const Ghost& g : m_sketch.hives) m_scene.hives.push_back(g.mark);
    if (!m_scene.hives.empty()) m_scene.gate = m_scene.hives.front().at; // no gate of its own
    setFont(font);
}

void SketchLayer::setFont(const QFont& font) { m_texts = std::make_unique<Texts>(m_scene, font); }

QRectF SketchLayer::metres() const {
    QRectF all;
    const auto add = [&all](core::MmPoint at) { all |= QRectF(at.x / 1000.0 - 0.4, -at.y / 1000.0 - 0.4, 0.8, 0.8); };
    for (const Ghost& g : m_sketch.hives) add(g.mark.at);
    if (m_sketch.gate) add(*m_sketch.gate);
    return all;
}

Layout SketchLayer::laidOut(const Camera& camera, double magnified) const {
    return layOut(m_scene, *m_texts, {camera.pixelsPerMetre, magnified, camera.view, false}, std::nullopt);
}

std::optional<size_t> SketchLayer::ghostAt(const QPointF& viewPixel, const Camera& camera, double magnified) const {
    if (m_scene.hives.empty()) return std::nullopt;
    const QPointF p = viewPixel - camera.offset();
    const Layout layout = laidOut(camera, magnified);
    for (size_t i = 0; i < layout.hives.size(); ++i)
        if (layout.hives[i].box.adjusted(-4, -4, 4, 4).contains(p) || layout.hives[i].label.contains(p)) return i;
    return std::nullopt;
}

void SketchLayer::paint(QPainter& p, const Camera& camera, double magnified, const look::Colours& c) const {
    if (m_sketch.empty()) return;
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    if (m_sketch.gate) paintSketchGate(p, camera, *m_sketch.gate, m_texts->lineFont(), c);
    p.translate(camera.offset());
    const Layout layout = laidOut(camera, magnified);
    for (size_t i = 0; i < layout.hives.size(); ++i)
        paintGhostHive(p, m_sketch.hives[i], layout.hives[i], layout.detail, c);
    p.setFont(m_texts->labelFont());
    for (size_t i = 0; i < layout.hives.size(); ++i) {
        if (!layout.hives[i].label.isEmpty()) p.fillRect(layout.hives[i].label.adjusted(-1, 1, 1, -1), c.paper);
        p.setPen(m_sketch.hives[i].refused ? c.warnText : c.planned);
        if (!layout.hives[i].label.isEmpty()) p.drawStaticText(layout.hives[i].label.topLeft(), m_texts->label(i));
    }
    p.restore();
}

} // namespace ui::plan
