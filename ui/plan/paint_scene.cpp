#include "ui/plan/paint_scene.h"

#include "ui/plan/curve.h"
#include "ui/plan/paint_asked.h"
#include "ui/plan/paint_fixed.h"
#include "ui/plan/paint_ground.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {

/// The arc as a polyline: drawn several times faster than as a Bézier path.
QPolygonF lineOf(const Arc& arc) {
    QPolygonF line;
    line << arc.points.front();
    for (size_t i = 0; i + 3 < arc.points.size(); i += 3) {
        const Curve c{arc.points[i], arc.points[i + 1], arc.points[i + 2], arc.points[i + 3]};
        const int steps = std::clamp(static_cast<int>(QLineF(c.from, c.to).length() / 6), 6, 48);
        for (int k = 1; k <= steps; ++k) line << c.at(1.0 * k / steps);
    }
    return line;
}

QRectF reachOf(const Arc& arc) {
    QRectF all(arc.sign - QPointF(12, 12), QSizeF(24, 24));
    for (const QPointF& p : arc.points) all |= QRectF(p - QPointF(12, 12), QSizeF(24, 24));
    return all | arc.metres;
}

QPointF unit(const QPointF& v) {
    const double length = std::hypot(v.x(), v.y());
    return length < 1e-9 ? QPointF(0, 1) : v / length;
}

/// The direction in which an arc arrives.
QPointF arrival(const Arc& arc) {
    const size_t n = arc.points.size();
    for (size_t back = 2; back <= std::min<size_t>(n, 4); ++back) {
        const QPointF v = arc.points[n - 1] - arc.points[n - back];
        if (std::hypot(v.x(), v.y()) > 0.5) return unit(v);
    }
    return {0, 1};
}

/// How boldly arcs are drawn: less so the further away.
double boldness(Detail detail) { return detail == Detail::Combs ? 1.0 : detail == Detail::Bar ? 0.75 : 0.6; }

void paintUnion(QPainter& p, const Arc& arc, bool chosen, double bold, const look::Colours& c) {
    if (arc.points.size() < 4) return;
    const QPointF way = arrival(arc);
    const QPointF side(-way.y(), way.x());
    const QPointF tip = arc.points.back();
    p.setPen(QPen(c.planned, (chosen ? 3.2 : 2) * bold, Qt::SolidLine, Qt::FlatCap, Qt::BevelJoin));
    p.setBrush(Qt::NoBrush);
    Arc shorter = arc;
    shorter.points.back() = tip - way * 7 * bold;
    p.drawPolyline(lineOf(shorter));
    p.setPen(Qt::NoPen);
    p.setBrush(c.planned);
    p.drawConvexPolygon(QPolygonF({tip, tip - (way * 12 - side * 5.2) * bold, tip - (way * 12 + side * 5.2) * bold}));
}

void paintSign(QPainter& p, const Arc& arc, const UnionMark& u, bool chosen, bool far, const Texts& texts,
               Sprites& sprites, const look::Colours& c) {
    if (arc.points.size() < 4 || (arc.signHidden && !chosen)) return;
    sprites.paintSign(p, arc.sign, u.order, chosen, far ? texts.lineFont() : texts.badgeFont(), c);
    if (arc.metres.isEmpty() || far) return;
    p.setFont(texts.lineFont());
    p.setPen(c.planned);
    p.drawText(arc.metres, Qt::AlignCenter, u.metres);
}

void paintShake(QPainter& p, const Arc& arc, double bold, const look::Colours& c) {
    if (arc.points.size() < 4) return;
    QPen dots(c.planned, 2.2 * bold, Qt::CustomDashLine, Qt::RoundCap);
    dots.setDashPattern({0.1, 2.3});
    p.setPen(dots);
    p.setBrush(Qt::NoBrush);
    p.drawPolyline(lineOf(arc));
    const QPointF way = arrival(arc);
    const QPointF side(-way.y(), way.x());
    const QPointF tip = arc.points.back();
    p.setPen(QPen(c.planned, 1.8 * bold, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.drawPolyline(QPolygonF({tip - (way * 9 - side * 5) * bold, tip, tip - (way * 9 + side * 5) * bold}));
}

} // namespace

void paintScene(QPainter& p, const Scene& scene, const Layout& layout, const Texts& texts, const Camera& camera,
                const Shown& shown, Sprites& sprites, const look::Colours& c) {
    p.setRenderHint(QPainter::Antialiasing, true);
    paintGrid(p, camera, scene.units.length, c);
    paintFixed(p, scene, layout, texts, camera, c);
    if (!scene.blank) paintGate(p, camera, scene.gate, texts.lineFont(), c, shown.gateWord);
    for (const StandMark& s : scene.stands) paintStand(p, camera, s, shown.magnified, texts.lineFont(), c);
    p.save();
    p.translate(camera.offset());
    const QRectF seen = camera.visible().adjusted(-40, -60, 40, 40);
    const auto up = [&shown](size_t i) {
        return !shown.pickedUp.empty() && std::binary_search(shown.pickedUp.begin(), shown.pickedUp.end(), i);
    };
    const auto visible = [&seen](const HivePlace& h) { return seen.intersects(h.box); };
    for (size_t i = 0; i < layout.hives.size(); ++i) {
        if (!visible(layout.hives[i])) continue;
        if (up(i))
            paintGhost(p, scene.hives[i], layout.hives[i], c);
        else if (layout.detail == Detail::Bar)
            sprites.paint(p, scene.hives[i], layout.hives[i], c);
        else
            paintHive(p, scene.hives[i], layout.hives[i], layout.detail, c);
    }
    const double bold = boldness(layout.detail);
    for (const Arc& a : layout.shakes)
        if (seen.intersects(reachOf(a))) paintShake(p, a, bold, c);
    std::vector<size_t> arcs;
    for (size_t i = 0; i < layout.unions.size(); ++i)
        if (seen.intersects(reachOf(layout.unions[i]))) arcs.push_back(i);
    for (size_t i : arcs) paintUnion(p, layout.unions[i], i == shown.chosenUnion, bold, c);
    for (size_t i = 0; i < layout.hives.size(); ++i)
        if (visible(layout.hives[i]) && !up(i))
            paintTexts(p, scene.hives[i], layout.hives[i], texts, i, scene.units.volume, c);
    for (size_t i = 0; i < layout.hives.size(); ++i)
        if (visible(layout.hives[i]) && !up(i))
            paintAsked(p, scene.hives[i], layout.hives[i], layout.detail, texts.lineFont(), c);
    const bool far = layout.detail != Detail::Combs;
    for (size_t i : arcs)
        paintSign(p, layout.unions[i], scene.unions[i], i == shown.chosenUnion, far, texts, sprites, c);
    for (const size_t i : shown.selected)
        if (i != shown.chosen && !up(i) && visible(layout.hives[i]))
            paintFrame(p, layout.hives[i], Emphasis::Selected, c);
    if (shown.chosen && *shown.chosen < layout.hives.size() && !up(*shown.chosen))
        paintFrame(p, layout.hives[*shown.chosen], shown.focus ? Emphasis::ChosenWithFocus : Emphasis::Chosen, c);
    p.restore();
    paintNorth(p, camera, texts.lineFont(), c);
    paintScaleBar(p, camera, scene.units.length, texts.lineFont(), c);
    paintAskedKey(p, camera, scene, texts.lineFont(), c);
}

void paintPreview(QPainter& p, const HiveMark& mark, const HivePlace& from, const QPointF& at, const QString& text,
                  bool refused, const Texts& texts, Detail detail, const look::Colours& c) {
    p.setRenderHint(QPainter::Antialiasing, true);
    const QColor line = refused ? c.warn : c.planned;
    p.setPen(QPen(line, 1.4, Qt::DashLine));
    p.drawLine(from.centre, at);
    HivePlace now = from;
    now.centre = at;
    now.box = outlineOf(at, from.size, mark.headingDeg).boundingRect();
    paintHive(p, mark, now, detail, c);
    p.setPen(QPen(line, 2.4));
    p.setBrush(Qt::NoBrush);
    p.drawRoundedRect(now.box.adjusted(-5, -5, 5, 5), 3, 3);
    if (text.isEmpty()) return;
    const QFontMetricsF metrics(texts.badgeFont());
    const QSizeF size(metrics.horizontalAdvance(text) + 12, metrics.height() + 4);
    const QRectF label(QPointF(at.x() - size.width() / 2, now.box.top() - size.height() - 10), size);
    p.setPen(Qt::NoPen);
    p.setBrush(line);
    p.drawRoundedRect(label, 3, 3);
    p.setFont(texts.badgeFont());
    p.setPen(refused ? c.onWarn : c.onPlanned);
    p.drawText(label, Qt::AlignCenter, text);
}

} // namespace ui::plan
