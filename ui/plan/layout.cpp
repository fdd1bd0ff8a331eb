#include "ui/plan/layout.h"

#include <QFontMetricsF>
#include <QTransform>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ui::plan {

namespace {

constexpr double kCombsFrom = 20; // pixels across the combs
constexpr double kBarFrom = 8;
constexpr double kMostCombs = 300; // hives in view
constexpr double kDotLeast = 5;

QRectF boxOf(const QPolygonF& outline) { return outline.boundingRect(); }

/// Places the texts of one scene, the more important ones first.
class Placer {
public:
    Placer(const Scene& scene, const Texts& texts, Layout& out)
        : m_scene(scene), m_texts(texts), m_out(out), m_taken(out.bounds, 48) {
        for (size_t i = 0; i < out.hives.size(); ++i) {
            const double gap = out.detail == Detail::Dot ? 0.5 : 3;
            m_taken.insert(out.hives[i].box.adjusted(-gap, -gap, gap, gap), owner(i));
        }
    }

    void placeAll(std::optional<size_t> chosen) {
        const std::vector<size_t> order = byImportance(chosen);
        for (size_t i : order) placeBadge(i);
        if (m_out.detail == Detail::Dot && m_out.textsYield) { // a label here and there would say nothing
            if (chosen && *chosen < m_out.hives.size()) placeLabel(*chosen, true);
            return;
        }
        for (size_t i : order) placeLabel(i, i == chosen);
        if (m_out.detail == Detail::Dot) return;
        for (size_t i : order) placeDrop(i);
        for (size_t i : order) placeLine(i);
    }

private:
    static int owner(size_t hive) { return static_cast<int>(hive); }

    std::vector<size_t> byImportance(std::optional<size_t> chosen) const {
        std::vector<int> weight(m_scene.hives.size(), 0);
        for (size_t i = 0; i < weight.size(); ++i) weight[i] = m_scene.hives[i].held() ? 2 : 0;
        for (const UnionMark& u : m_scene.unions) weight[u.moved] = weight[u.host] = 3;
        for (const ShakeMark& s : m_scene.shakes) weight[s.colony] = std::max(weight[s.colony], 1);
        if (chosen && *chosen < weight.size()) weight[*chosen] = 9;
        std::vector<size_t> order(weight.size());
        std::iota(order.begin(), order.end(), size_t{0});
        std::stable_sort(order.begin(), order.end(), [&](size_t a, size_t b) { return weight[a] > weight[b]; });
        return order;
    }

    /// Takes the first of `spots` that is free, else none. `mine`: touching its own hive is allowed.
    QRectF take(size_t hive, std::initializer_list<QRectF> spots, bool mine = false) {
        for (const QRectF& spot : spots)
            if (m_taken.free(spot, mine ? owner(hive) : RectGrid::kNobody)) {
                m_taken.insert(spot, owner(hive));
                return spot;
            }
        return {};
    }

    void placeBadge(size_t i) {
        const HiveMark& m = m_scene.hives[i];
        HivePlace& h = m_out.hives[i];
        const double side = m_texts.lineHeight() + 4;
        const double wide = side + (static_cast<double>(m.holdLetters.size()) - 1) * side * 0.62;
        const QPointF at = h.box.topRight() + QPointF(2, -side + 2);
        if (m.held() && m_out.detail != Detail::Dot)
            h.badge = take(i,
                           {QRectF(at, QSizeF(wide, side)),
                            QRectF(h.box.topLeft() + QPointF(-wide - 2, -side + 2), QSizeF(wide, side)),
                            QRectF(h.box.topLeft() + QPointF(0, -side - 2), QSizeF(wide, side))},
                           true);
        if (!m.layingWorkers || m_out.detail == Detail::Dot) return;
        const QRectF beside(at + QPointF(m.held() ? wide + 3 : 0, 0), QSizeF(side, side));
        h.laying = take(i, {beside, QRectF(h.box.topLeft() + QPointF(-side - 2, -side + 2), beside.size())}, true);
    }

    void placeLabel(size_t i, bool always) {
        HivePlace& h = m_out.hives[i];
        const QSizeF size = m_texts.label(i).size();
        const double x = h.centre.x() - size.width() / 2;
        const double gap = m_out.detail == Detail::Combs ? 7 : 4;
        const QRectF below(QPointF(x, h.box.bottom() + gap), size);
        const QRectF above(QPointF(x, h.box.top() - gap - size.height()), size);
        const QRectF right(QPointF(h.box.right() + gap, h.centre.y() - size.height() / 2), size);
        const QRectF left(QPointF(h.box.left() - gap - size.width(), right.top()), size);
        h.label = m_out.detail == Detail::Dot ? take(i, {below}) : take(i, {below, above, right, left});
        if (!always || !h.label.isEmpty()) return;
        h.label = below;
        m_taken.insert(below, owner(i));
    }

    void placeDrop(size_t i) {
        const HiveMark& m = m_scene.hives[i];
        HivePlace& h = m_out.hives[i];
        if (m.feedHalfLitres <= 0) return;
        const double wide = std::max(22.0, m_texts.width(QStringLiteral("%1.5 L").arg(m.feedHalfLitres / 2)));
        const QSizeF size(wide, 18 + m_texts.lineHeight());
        const double y = h.centre.y() - size.height() / 2 + 4;
        h.drop = take(i, {QRectF(QPointF(h.box.right() + 6, y), size),
                          QRectF(QPointF(h.box.left() - 6 - size.width(), y), size)});
    }

    void placeLine(size_t i) {
        HivePlace& h = m_out.hives[i];
        if (h.label.isEmpty()) return;
        const QSizeF size = m_texts.line(i).size();
        const double x = h.label.center().x() - size.width() / 2;
        const QRectF below(QPointF(x, h.label.bottom()), size);
        h.line = take(i, {below.adjusted(-2, 1, 2, 0)});
        if (!h.line.isEmpty()) h.line = below;
    }

    const Scene& m_scene;
    const Texts& m_texts;
    Layout& m_out;
    RectGrid m_taken;
};

} // namespace

Texts::Texts(const Scene& scene, const QFont& font) : m_labelFont(font), m_lineFont(font), m_badgeFont(font) {
    const double size = font.pointSizeF() > 0 ? font.pointSizeF() : 10;
    m_labelFont.setBold(true);
    if (font.pixelSize() > 0) { // on paper, where the painter scales pixels
        m_lineFont.setPixelSize(std::max(12, static_cast<int>(std::lround(font.pixelSize() * 0.85))));
    } else {
        m_labelFont.setPointSizeF(size);
        m_lineFont.setPointSizeF(size * 0.85);
    }
    m_badgeFont = m_labelFont;
    m_lineHeight = QFontMetricsF(m_lineFont).height();
    const auto shape = [](const QString& text, const QFont& in) {
        QStaticText t(text);
        t.setTextFormat(Qt::PlainText);
        t.setPerformanceHint(QStaticText::AggressiveCaching);
        t.prepare(QTransform(), in);
        return t;
    };
    for (const HiveMark& h : scene.hives) {
        m_labels.push_back(shape(h.label, m_labelFont));
        m_lines.push_back(shape(h.line, m_lineFont));
    }
}

double Texts::width(const QString& lesserText) const { return QFontMetricsF(m_lineFont).horizontalAdvance(lesserText); }

QPolygonF outlineOf(const QPointF& centre, const QSizeF& size, int headingDeg) {
    const double w = size.width() / 2;
    const double l = size.height() / 2;
    const QTransform turn = QTransform::fromTranslate(centre.x(), centre.y()).rotate(headingDeg - 180);
    return turn.map(QPolygonF({{-w, -l}, {w, -l}, {w, l}, {-w, l}}));
}

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
        h.box = boxOf(outlineOf(h.centre, h.size, m.headingDeg));
        out.bounds |= h.box;
        out.hives.push_back(h);
    }
    const QSizeF all = out.bounds.size().expandedTo({1, 1});
    const double seen =
        std::min(1.0, view.size.width() / all.width()) * std::min(1.0, view.size.height() / all.height());
    const double usual = scene.hives.empty() ? 0 : scene.hives.front().widthMm * scale;
    out.detail = detailOf(usual, seen * static_cast<double>(scene.hives.size()));
    out.textsYield = view.textsYield && out.detail != Detail::Combs;
    out.chosen = chosen;
    Placer(scene, texts, out).placeAll(chosen);
    for (const HivePlace& h : out.hives) out.bounds |= h.label | h.line | h.badge | h.drop | h.laying;
    return out;
}

RectGrid obstaclesOf(const Layout& layout) {
    constexpr double kGap = 5;
    RectGrid grid(layout.bounds.adjusted(-60, -60, 60, 60), 24);
    if (const QRectF in = layout.within; !in.isEmpty()) {
        const QRectF all = layout.bounds.united(in).adjusted(-9000, -9000, 9000, 9000);
        const int owner = -2; // nobody's
        grid.insert(QRectF(all.topLeft(), QPointF(all.right(), in.top())), owner);
        grid.insert(QRectF(QPointF(all.left(), in.bottom()), all.bottomRight()), owner);
        grid.insert(QRectF(all.topLeft(), QPointF(in.left(), all.bottom())), owner);
        grid.insert(QRectF(QPointF(in.right(), all.top()), all.bottomRight()), owner);
    }
    for (size_t i = 0; i < layout.hives.size(); ++i) {
        const HivePlace& h = layout.hives[i];
        const int owner = static_cast<int>(i);
        grid.insert(h.box.adjusted(-kGap, -kGap, kGap, kGap), owner);
        const bool asked = !layout.textsYield || layout.chosen == i;
        for (const QRectF& r : {asked ? h.label : QRectF(), asked ? h.line : QRectF(), h.badge, h.drop, h.laying})
            if (!r.isEmpty()) grid.insert(r.adjusted(-4, -2, 4, 2), owner + static_cast<int>(layout.hives.size()));
    }
    return grid;
}

} // namespace ui::plan
