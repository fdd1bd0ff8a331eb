#include "ui/plan/layout.h"

#include "ui/plan/placer.h"

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {

constexpr double kCombsFrom = 20; // pixels across the combs
constexpr double kBarFrom = 8;
constexpr double kMostCombs = 300; // hives in view
constexpr double kDotLeast = 6;

} // namespace

Detail detailOf(double across, double hivesInView) {
    if (across < kBarFrom) return Detail::Dot;
    return across >= kCombsFrom && (hivesInView <= kMostCombs || across >= 40) ? Detail::Combs : Detail::Bar;
}

Layout layOut(const Scene& scene, const Texts& texts, const View& view, std::optional<size_t> chosen) {
    Layout out;
    const double pixelsPerMetre = view.pixelsPerMetre;
    out.pixelsPerMetre = pixelsPerMetre;
    const double scale = pixelsPerMetre / 1000 * view.magnified;
    out.hives.reserve(scene.hives.size());
    const QPointF gate(scene.gate.x * pixelsPerMetre / 1000, -scene.gate.y * pixelsPerMetre / 1000);
    out.bounds = QRectF(gate, QSizeF(1, 1));
    for (const HiveMark& m : scene.hives) {
        HivePlace h;
        h.centre = QPointF(m.at.x * pixelsPerMetre / 1000, -m.at.y * pixelsPerMetre / 1000);
        h.size = QSizeF(std::max(kDotLeast, m.widthMm * scale), std::max(kDotLeast, m.lengthMm * scale));
        h.box = outlineBounds(h.centre, h.size, m.headingDeg);
        h.body = h.size.width() < kBarFrom ? h.box : bodyBounds(h.centre, h.size, m.headingDeg, m.boxes);
        out.bounds |= h.body;
        out.hives.push_back(h);
    }
    const QSizeF all = out.bounds.size().expandedTo({1, 1});
    const double seen =
        std::min(1.0, view.size.width() / all.width()) * std::min(1.0, view.size.height() / all.height());
    const double usual = scene.hives.empty() ? 0 : scene.hives.front().widthMm * scale;
    out.detail = detailOf(usual, seen * static_cast<double>(scene.hives.size()));
    out.textsYield = view.textsYield && out.detail != Detail::Combs;
    out.chosen = chosen;
    placeTexts(scene, texts, out);
    for (const HivePlace& h : out.hives) out.bounds |= h.label | h.line | h.badge | h.drop | h.laying;
    return out;
}

QRectF bodiesOf(const Layout& layout) {
    QRectF all;
    for (const HivePlace& h : layout.hives) all |= h.box | h.label | h.line | h.badge | h.drop | h.laying;
    return all;
}

} // namespace ui::plan
