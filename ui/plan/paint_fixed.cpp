#include "ui/plan/paint_fixed.h"

#include "core/model/fixed_shape.h"
#include "ui/look/ground_colours.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {

using core::FixedKind;

bool curved(FixedKind kind) { return kind == FixedKind::Hedge || kind == FixedKind::Track || kind == FixedKind::Water; }

QPolygonF cornersOf(const FixedMark& mark, const Camera& camera) {
    QPolygonF out;
    for (const core::MmPoint p : mark.points) out << camera.toView(p);
    return out;
}

/// Smooth through all its points (Catmull and Rom's curve), for what grows or flows.
QPolygonF smooth(const QPolygonF& points, bool closed) {
    constexpr int kSteps = 14;
    const qsizetype n = points.size();
    if (n < 3) return points;
    const auto at = [&](qsizetype i) { return points[closed ? (i + n) % n : std::clamp<qsizetype>(i, 0, n - 1)]; };
    QPolygonF out;
    for (qsizetype i = 0; i < (closed ? n : n - 1); ++i)
        for (int k = 0; k < kSteps; ++k) {
            const double t = double(k) / kSteps;
            const QPointF a = at(i - 1), b = at(i), c = at(i + 1), d = at(i + 2);
            out << 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t +
                          (3 * b - a - 3 * c + d) * t * t * t);
        }
    if (!closed) out << points.back();
    return out;
}

/// As it is drawn: a run, or an edge whose last point is its first.
QPolygonF lineOf(const FixedMark& mark, const Camera& camera) {
    QPolygonF line = cornersOf(mark, camera);
    const bool closed = core::isArea(mark.kind);
    if (curved(mark.kind)) line = smooth(line, closed);
    if (closed && !line.isEmpty()) line << line.front();
    return line;
}

double crownOf(const FixedMark& mark, const Camera& camera) {
    return std::max(5.0, mark.radiusMm * camera.pixelsPerMetre / 1000);
}

/// `take(point, direction)` each `every` pixels of the line, from half of that on.
template <class Fn> void along(const QPolygonF& line, double every, Fn take) {
    double next = every / 2;
    double gone = 0;
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const QPointF way = line[i + 1] - line[i];
        const double length = std::hypot(way.x(), way.y());
        for (; length > 0 && next <= gone + length; next += every)
            take(line[i] + way * ((next - gone) / length), way / length);
        gone += length;
    }
}

double lengthOf(const QPolygonF& line) {
    double all = 0;
    for (qsizetype i = 0; i + 1 < line.size(); ++i) all += QLineF(line[i], line[i + 1]).length();
    return all;
}

/// Far outside the view nothing is drawn; a step that gives so many marks at most.
double stepOf(const QPolygonF& line, double pixels) { return std::max(pixels, lengthOf(line) / 4000); }

QColor faint(QColor colour, int alpha) {
    colour.setAlpha(alpha);
    return colour;
}

/// Leaves in two rows, none quite like the next.
void paintHedge(QPainter& p, const QPolygonF& line, double ppm, const look::Colours& c) {
    const look::GroundColours g = look::groundColours(c);
    const double r = std::clamp(0.17 * ppm, 2.2, 7.0);
    p.setPen(QPen(g.leaf, 1));
    p.setBrush(faint(g.leaf, c.dark ? 70 : 60));
    int n = 0;
    along(line, stepOf(line, 1.35 * r), [&](const QPointF& at, const QPointF& way) {
        const QPointF side(-way.y(), way.x());
        const double uneven = 0.82 + 0.18 * ((n * 7919) % 13) / 6.0;
        p.drawEllipse(at + side * (n % 2 == 0 ? 0.55 : -0.55) * r, r * uneven, r * uneven);
        ++n;
    });
}

/// A line with posts to one side.
void paintFence(QPainter& p, const QPolygonF& line, double ppm, const look::Colours& c) {
    const look::GroundColours g = look::groundColours(c);
    p.setPen(QPen(g.built, 1.4));
    p.setBrush(Qt::NoBrush);
    p.drawPolyline(line);
    const double post = std::clamp(0.14 * ppm, 4.0, 7.0);
    along(line, stepOf(line, std::max(11.0, ppm * (ppm > 30 ? 0.5 : 1))),
          [&](const QPointF& at, const QPointF& way) { p.drawLine(at, at + QPointF(way.y(), -way.x()) * post); });
}

void paintTrack(QPainter& p, const QPolygonF& line, double ppm, const look::Colours& c) {
    const look::GroundColours g = look::groundColours(c);
    const double half = std::max(3.0, 1.1 * ppm); // wheels some 2.2 m apart (from memory)
    QPen dashes(g.built, 1.3, Qt::CustomDashLine, Qt::FlatCap);
    dashes.setDashPattern({6, 4});
    p.setPen(dashes);
    p.setBrush(Qt::NoBrush);
    for (const double side : {-half, half}) {
        QPolygonF rut;
        for (qsizetype i = 0; i < line.size(); ++i) {
            const QPointF way = line[std::min(i + 1, line.size() - 1)] - line[std::max<qsizetype>(i - 1, 0)];
            const double length = std::max(1e-9, std::hypot(way.x(), way.y()));
            rut << line[i] + QPointF(-way.y(), way.x()) / length * side;
        }
        p.drawPolyline(rut);
    }
}

/// Its edge with short strokes inwards, and hardly any blue.
void paintWater(QPainter& p, const QPolygonF& line, const look::Colours& c) {
    const look::GroundColours g = look::groundColours(c);
    p.setPen(QPen(g.water, 1.3));
    p.setBrush(faint(g.water, c.dark ? 46 : 30));
    p.drawPolygon(line);
    double area = 0; // twice the signed one: the side that is within
    for (qsizetype i = 0; i + 1 < line.size(); ++i)
        area += line[i].x() * line[i + 1].y() - line[i + 1].x() * line[i].y();
    p.setPen(QPen(g.water, 1));
    int n = 0;
    along(line, stepOf(line, 6), [&](const QPointF& at, const QPointF& way) {
        const QPointF inward = area > 0 ? QPointF(-way.y(), way.x()) : QPointF(way.y(), -way.x());
        p.drawLine(at, at + inward * (n % 3 == 0 ? 9 : 5));
        ++n;
    });
}

void paintShed(QPainter& p, const QPolygonF& line, const look::Colours& c) {
    const look::GroundColours g = look::groundColours(c);
    p.setPen(QPen(g.built, 1.6, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    p.setBrush(faint(g.built, 26));
    p.drawPolygon(line);
    if (line.size() < 4) return;
    p.setPen(QPen(g.built, 1));
    p.drawLine(line[0], line[2]);
}

void paintTree(QPainter& p, const QPointF& at, double crown, const look::Colours& c) {
    const look::GroundColours g = look::groundColours(c);
    p.setPen(QPen(g.leaf, 1.3));
    p.setBrush(faint(g.leaf, c.dark ? 34 : 24));
    p.drawEllipse(at, crown, crown);
    const double arm = std::min(4.0, crown / 2);
    p.drawLine(at - QPointF(arm, 0), at + QPointF(arm, 0));
    p.drawLine(at - QPointF(0, arm), at + QPointF(0, arm));
}

bool crosses(const QRectF& box, const QPolygonF& line) {
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const QRectF step = QRectF(line[i], line[i + 1]).normalized().adjusted(-1, -1, 1, 1);
        if (!step.intersects(box)) continue;
        const QLineF way(line[i], line[i + 1]);
        if (box.contains(line[i]) || box.contains(line[i + 1])) return true;
        for (const QLineF& edge : {QLineF(box.topLeft(), box.topRight()), QLineF(box.bottomLeft(), box.bottomRight()),
                                   QLineF(box.topLeft(), box.bottomLeft()), QLineF(box.topRight(), box.bottomRight())})
            if (way.intersects(edge, nullptr) == QLineF::BoundedIntersection) return true;
    }
    return false;
}

/// How far its marks reach from its line, in pixels.
double spreadOf(FixedKind kind, double ppm) {
    switch (kind) {
    case FixedKind::Hedge:
        return 2 * std::clamp(0.17 * ppm, 2.2, 7.0);
    case FixedKind::Track:
        return std::max(3.0, 1.1 * ppm) + 1;
    case FixedKind::Fence:
        return 7;
    default:
        return 3;
    }
}

/// Where its word may stand, best first, by the word's size.
std::vector<QRectF> wordPlaces(const FixedMark& mark, const QPolygonF& line, const Camera& camera, const QSizeF& size) {
    std::vector<QRectF> out;
    const auto centred = [&](const QPointF& at) {
        out.emplace_back(at - QPointF(size.width() / 2, size.height() / 2), size);
    };
    if (mark.kind == FixedKind::Tree) {
        const double away = crownOf(mark, camera) + size.height() / 2 + 2;
        for (const double up : {1.0, -1.0}) centred(line.front() + QPointF(0, away * up));
        return out;
    }
    if (core::isArea(mark.kind)) {
        const QRectF all = line.boundingRect();
        if (all.width() > size.width() + 28 && all.height() > size.height() + 26) centred(all.center());
        centred({all.center().x(), all.bottom() + size.height() / 2 + 3});
        centred({all.center().x(), all.top() - size.height() / 2 - 3});
        return out;
    }
    const double away = spreadOf(mark.kind, camera.pixelsPerMetre) + 3 + size.height() / 2;
    const double every = lengthOf(line) / 9;
    std::vector<std::pair<QPointF, QPointF>> spots;
    if (every > 1) along(line, every, [&](const QPointF& at, const QPointF& way) { spots.emplace_back(at, way); });
    for (const size_t i : {4u, 3u, 5u, 2u, 6u, 1u, 7u, 0u, 8u}) {
        if (i >= spots.size()) continue;
        const QPointF way = spots[i].second;
        const QPointF side = way.x() < 0 ? QPointF(-way.y(), way.x()) : QPointF(way.y(), -way.x()); // upwards
        const double reach = away + std::abs(side.x()) * size.width() / 2;
        centred(spots[i].first + side * reach);
        centred(spots[i].first - side * reach);
    }
    return out;
}

void paintWord(QPainter& p, const FixedMark& mark, const QPolygonF& line, const std::vector<QRectF>& taken,
               const Camera& camera, const Texts& texts, const look::Colours& c) {
    const QFontMetricsF metrics(texts.lineFont());
    const QSizeF size(metrics.horizontalAdvance(mark.word) + 2, metrics.height());
    const QRectF view = QRectF(QPointF(), camera.view).adjusted(4, 4, -4, -4);
    for (const QRectF& place : wordPlaces(mark, line, camera, size)) {
        if (!view.contains(place)) continue;
        if (std::ranges::any_of(taken, [&](const QRectF& t) { return t.intersects(place); })) continue;
        p.setFont(texts.lineFont());
        p.setPen(c.quiet);
        p.drawText(place, Qt::AlignCenter, mark.word);
        return;
    }
}

} // namespace

void paintFixedMark(QPainter& p, const FixedMark& mark, const Camera& camera, const look::Colours& c) {
    if (mark.points.empty()) return;
    const QPolygonF line = lineOf(mark, camera);
    const double ppm = camera.pixelsPerMetre;
    switch (mark.kind) {
    case FixedKind::Hedge:
        return paintHedge(p, line, ppm, c);
    case FixedKind::Fence:
        return paintFence(p, line, ppm, c);
    case FixedKind::Track:
        return paintTrack(p, line, ppm, c);
    case FixedKind::Water:
        return paintWater(p, line, c);
    case FixedKind::Shed:
        return paintShed(p, line, c);
    case FixedKind::Tree:
        return paintTree(p, line.front(), crownOf(mark, camera), c);
    }
}

void paintFixed(QPainter& p, const Scene& scene, const Layout& layout, const Texts& texts, const Camera& camera,
                const look::Colours& c) {
    if (scene.fixed.empty()) return;
    p.save();
    p.setRenderHint(QPainter::Antialiasing, true);
    const QRectF view(QPointF(), camera.view);
    std::vector<QRectF> taken;
    std::vector<QRectF> hiveTexts;
    for (const HivePlace& h : layout.hives) {
        const QRectF box = h.box.translated(camera.offset());
        if (!view.intersects(box.adjusted(-60, -60, 60, 60))) continue;
        taken.push_back(box);
        for (const QRectF& text : {h.label, h.line, h.badge, h.drop, h.laying})
            if (!text.isEmpty()) taken.push_back(text.translated(camera.offset()));
        for (const QRectF& text : {h.label, h.line})
            if (!text.isEmpty()) hiveTexts.push_back(text.translated(camera.offset()));
    }
    const QPointF gate = camera.toView(scene.gate);
    if (!scene.blank) taken.emplace_back(gate - QPointF(30, 14), QSizeF(60, 40));
    for (const FixedMark& mark : scene.fixed) paintFixedMark(p, mark, camera, c);
    for (const FixedMark& mark : scene.fixed) {
        if (mark.points.empty()) continue;
        const QPolygonF line = lineOf(mark, camera);
        const double spread = spreadOf(mark.kind, camera.pixelsPerMetre);
        for (const QRectF& text : hiveTexts)
            if (mark.kind != FixedKind::Tree && crosses(text.adjusted(-spread, -spread, spread, spread), line))
                p.fillRect(text.adjusted(-1, 0, 1, 0), faint(c.paper, 215));
        paintWord(p, mark, line, taken, camera, texts, c);
    }
    p.restore();
}

QRectF reachOf(const FixedMark& mark) {
    QRectF all;
    const double around = mark.kind == FixedKind::Tree ? mark.radiusMm / 1000.0 : 0.3;
    for (const core::MmPoint p : mark.points)
        all |= QRectF(p.x / 1000.0 - around, -p.y / 1000.0 - around, 2 * around, 2 * around);
    return all;
}

double apartFrom(const FixedMark& mark, const Camera& camera, const QPointF& viewPixel) {
    if (mark.points.empty()) return 1e9;
    const QPolygonF line = lineOf(mark, camera);
    if (mark.kind == FixedKind::Tree) {
        const QPointF away = viewPixel - line.front();
        return std::max(0.0, std::hypot(away.x(), away.y()) - crownOf(mark, camera));
    }
    if (mark.kind == FixedKind::Shed && line.containsPoint(viewPixel, Qt::OddEvenFill)) return 0;
    double least = 1e9;
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const QPointF way = line[i + 1] - line[i];
        const double squared = std::max(1e-9, QPointF::dotProduct(way, way));
        const double t = std::clamp(QPointF::dotProduct(viewPixel - line[i], way) / squared, 0.0, 1.0);
        const QPointF away = viewPixel - (line[i] + way * t);
        least = std::min(least, std::hypot(away.x(), away.y()));
    }
    return mark.kind == FixedKind::Track ? std::max(0.0, least - spreadOf(mark.kind, camera.pixelsPerMetre)) : least;
}

} // namespace ui::plan
