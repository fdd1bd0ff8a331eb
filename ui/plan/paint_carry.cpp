#include "ui/plan/paint_carry.h"

#include "ui/plan/hive_shape.h"

#include <QPainter>

namespace ui::plan {

namespace {

HivePlace placeAt(const HivePlace& from, const QPointF& at, int headingDeg) {
    HivePlace now = from;
    now.centre = at;
    now.box = outlineOf(at, from.size, headingDeg).boundingRect();
    return now;
}

void paintOther(QPainter& p, const HiveMark& mark, const HivePlace& place, bool refused, size_t hive,
                const Texts& texts, const look::Colours& c) {
    const QColor line = refused ? c.warn : c.planned;
    QColor ground = c.paper;
    ground.setAlphaF(0.8f);
    const QPolygonF outline = outlineOf(place.centre, place.size, mark.headingDeg);
    p.setPen(QPen(line, 1.6, Qt::DashLine));
    p.setBrush(ground);
    p.drawConvexPolygon(outline);
    if (refused) {
        p.drawLine(outline[0], outline[2]);
        p.drawLine(outline[1], outline[3]);
    }
    p.setFont(texts.labelFont());
    p.setPen(refused ? c.warnText : c.planned);
    const QSizeF size = texts.label(hive).size();
    const QPointF at(place.centre.x() - size.width() / 2, place.centre.y() - size.height() / 2);
    p.fillRect(QRectF(at, size).adjusted(-2, 1, 2, -1), ground);
    p.drawStaticText(at, texts.label(hive));
}

/// Below the gripped hive, on paper.
void paintCaution(QPainter& p, const QRectF& box, const QString& text, const QFont& font, const look::Colours& c) {
    if (text.isEmpty()) return;
    const QFontMetricsF metrics(font);
    const QSizeF size(metrics.horizontalAdvance(text) + 12, metrics.height() + 4);
    const QRectF label(QPointF(box.center().x() - size.width() / 2, box.bottom() + 10), size);
    p.setPen(QPen(c.warn, 1.4));
    p.setBrush(c.paper);
    p.drawRoundedRect(label, 3, 3);
    p.setFont(font);
    p.setPen(c.warnText);
    p.drawText(label, Qt::AlignCenter, text);
}

} // namespace

void paintCarry(QPainter& p, const Scene& scene, const Layout& layout, const Texts& texts, const Camera& camera,
                const Carry& carry, const CarryWords& words, const look::Colours& c) {
    const auto viewOf = [&](core::MmPoint at) { return camera.toView(at) - camera.offset(); };
    p.setRenderHint(QPainter::Antialiasing, true);
    for (const OnWay& other : carry.others)
        if (const auto hive = scene.find(other.colony))
            paintOther(p, scene.hives[*hive],
                       placeAt(layout.hives[*hive], viewOf(other.to), scene.hives[*hive].headingDeg),
                       other.blockedBy.has_value(), *hive, texts, c);
    const auto hive = scene.find(carry.colony);
    if (!hive) return;
    const HiveMark& mark = scene.hives[*hive];
    paintPreview(p, mark, layout.hives[*hive], viewOf(carry.to), words.beside, words.refused, texts, layout.detail, c);
    const HivePlace now = placeAt(layout.hives[*hive], viewOf(carry.to), mark.headingDeg);
    if (words.byHold) hatch(p, outlineOf(now.centre, now.size, mark.headingDeg), 7, c);
    paintCaution(p, now.box.adjusted(-5, -5, 5, 5), words.caution, texts.lineFont(), c);
}

} // namespace ui::plan
