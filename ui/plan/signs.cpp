#include "ui/plan/signs.h"

#include "ui/plan/curve.h"
#include "ui/plan/sprites.h"

#include <QLineF>

#include <algorithm>
#include <cmath>
#include <functional>

namespace ui::plan {

namespace {

QPointF pointAt(const Arc& arc, double t) {
    const size_t pieces = arc.points.size() / 3;
    const double along = t * static_cast<double>(pieces);
    const size_t piece = std::min(static_cast<size_t>(along), pieces - 1);
    const QPointF* p = &arc.points[3 * piece];
    return Curve{p[0], p[1], p[2], p[3]}.at(along - static_cast<double>(piece));
}

double radiusOf(const Layout& layout, const Texts& texts) {
    return signRadius(layout.detail == Detail::Combs ? texts.badgeFont() : texts.lineFont());
}

class Signs {
public:
    Signs(const Scene& scene, const Texts& texts, Layout& layout)
        : m_scene(scene),
          m_texts(texts),
          m_layout(layout),
          m_hard(obstaclesOf(scene, layout, 0.5)),
          m_arcs(layout.bounds.adjusted(-60, -60, 60, 60), 24),
          m_lines(layout.bounds.adjusted(-60, -60, 60, 60), 24),
          m_r(radiusOf(layout, texts)) {
        for (size_t i = 0; i < layout.unions.size(); ++i)
            eachStep(layout.unions[i].points,
                     [&](const QRectF& r) { m_arcs.insert(r.adjusted(-2, -2, 2, 2), static_cast<int>(i)); });
        for (const Arc& arc : layout.shakes)
            eachStep(arc.points, [&](const QRectF& r) { m_arcs.insert(r, RectGrid::kNobody - 1); });
        for (const HivePlace& h : layout.hives)
            if (!h.line.isEmpty()) m_lines.insert(h.line, 0);
    }

    void placeSign(size_t i) {
        Arc& arc = m_layout.unions[i];
        const std::vector<QPointF> spots = spotsOf(arc);
        const bool far = m_layout.textsYield && m_layout.detail == Detail::Dot; // few would find room
        const auto spot = far ? std::nullopt : best(spots, static_cast<int>(i));
        arc.sign = spot.value_or(spots.front());
        arc.signHidden = !spot && m_layout.textsYield;
        if (!arc.signHidden) m_hard.insert(around(arc.sign, m_r + 1), mine(i));
    }

    /// After texts have given way.
    void placeMetres(size_t i) {
        Arc& arc = m_layout.unions[i];
        if (arc.signHidden) return;
        const QSizeF size(m_texts.width(m_scene.unions[i].metres), m_texts.lineHeight());
        const double h = size.height();
        const double w = size.width();
        const QPointF c = arc.sign;
        for (const QPointF& beside :
             {QPointF(-w / 2, -m_r - h - 1), QPointF(m_r + 4, -h / 2), QPointF(-m_r - 4 - w, -h / 2),
              QPointF(-w / 2, m_r + 1), QPointF(m_r, -m_r - h + 2), QPointF(-m_r - w, -m_r - h + 2),
              QPointF(m_r, m_r - 2), QPointF(-m_r - w, m_r - 2)}) {
            const QRectF rect(c + beside, size);
            if (!m_hard.free(rect) || !m_arcs.free(rect) || crossesLine(rect)) continue;
            arc.metres = rect;
            m_hard.insert(rect.adjusted(-2, 0, 2, 0), mine(i));
            return;
        }
    }

private:
    int mine(size_t i) const { return static_cast<int>(2 * m_scene.hives.size() + i); }

    bool crossesLine(const QRectF& rect) const {
        const QRectF apart = rect.adjusted(-6, 0, 6, 0); // else two figures read as one
        return std::ranges::any_of(m_layout.hives, [&](const HivePlace& h) { return h.line.intersects(apart); });
    }

    /// Where the number may stand, the best first: on the arc; beside a short one, which would vanish beneath it.
    std::vector<QPointF> spotsOf(const Arc& arc) const {
        std::vector<QPointF> spots;
        const bool isShort = QLineF(arc.points.front(), arc.points.back()).length() < 6 * m_r;
        const double away = m_r + 3;
        const QPointF middle = pointAt(arc, 0.5);
        if (isShort)
            for (const QPointF& off : {QPointF(0, -away), QPointF(0, away), QPointF(away, 0), QPointF(-away, 0),
                                       QPointF(away, -away), QPointF(-away, -away)})
                spots.push_back(middle + off);
        for (double off = 0; off < 0.36 && !isShort; off += 0.025)
            for (const double side : {-1.0, 1.0}) spots.push_back(pointAt(arc, 0.5 + side * off));
        for (const double reach : {1.0, 1.5, 2.2})
            for (double off = 0; off < 0.46; off += 0.04)
                for (const double along : {-1.0, 1.0})
                    for (const QPointF& side : {QPointF(0, -1), QPointF(0, 1), QPointF(1, 0), QPointF(-1, 0)})
                        spots.push_back(pointAt(arc, 0.5 + along * off) + side * m_r * reach);
        for (double out = m_r; !m_layout.textsYield && out < 7 * m_r; out += 3) // amid hives: the nearest free ground
            for (int i = 0; i < 24; ++i)
                spots.push_back(middle + out * QPointF(std::sin(i * 0.2618), -std::cos(i * 0.2618)));
        return spots;
    }

    /// The first spot clear of hives and texts; rather of strengths and other arcs as well.
    std::optional<QPointF> best(const std::vector<QPointF>& spots, int owner) const {
        struct Wish {
            double gap;
            bool lines, arcs;
        };
        for (const Wish& wish : {Wish{2, true, true}, Wish{0.5, true, true}, Wish{0.5, true, false},
                                 Wish{0.5, false, true}, Wish{0.5, false, false}})
            for (const QPointF& p : spots) {
                const QRectF round = around(p, m_r + wish.gap);
                if (m_hard.free(round) && (!wish.lines || m_lines.free(round)) &&
                    (!wish.arcs || m_arcs.free(round, owner)))
                    return p;
            }
        return std::nullopt;
    }

    const Scene& m_scene;
    const Texts& m_texts;
    Layout& m_layout;
    RectGrid m_hard;
    RectGrid m_arcs;
    RectGrid m_lines;
    const double m_r; ///< of the number's circle
};

/// A strength that is in the way, written shorter where that is enough.
void shorten(HivePlace& h, size_t hive, const Texts& texts, const RectGrid& inTheWay) {
    if (h.label.isEmpty() || h.line.isEmpty()) return void(h.line = {});
    const QRectF was = h.line;
    h.line = {};
    if (h.lineForm == LineForm::Brief) return;
    const QSizeF size = texts.line(hive, LineForm::Brief).size();
    if (texts.line(hive, LineForm::Brief).text().isEmpty()) return;
    const QRectF spot = lineSpot(h, size);
    if (!inTheWay.free(spot) || !was.adjusted(-1, -1, 1, 1).contains(spot)) return;
    h.line = spot;
    h.lineForm = LineForm::Brief;
}

/// One manner for all: where some strengths are a number alone, all are, but the chosen hive's.
void evenStrengths(const Texts& texts, Layout& layout) {
    const auto brief = [](const HivePlace& h) { return !h.line.isEmpty() && h.lineForm == LineForm::Brief; };
    if (std::ranges::none_of(layout.hives, brief)) return;
    for (size_t i = 0; i < layout.hives.size(); ++i) {
        HivePlace& h = layout.hives[i];
        if (h.line.isEmpty() || h.lineForm == LineForm::Brief || layout.chosen == i) continue;
        const QStaticText& text = texts.line(i, LineForm::Brief);
        if (text.text().isEmpty()) continue;
        h.line = lineSpot(h, text.size());
        h.lineForm = LineForm::Brief;
    }
}

} // namespace

void yieldTexts(const Texts& texts, Layout& layout) {
    RectGrid marks(layout.bounds.adjusted(-60, -60, 60, 60), 24); // arcs and numbers
    const double r = radiusOf(layout, texts) + 1;
    for (const std::vector<Arc>* arcs : {&layout.unions, &layout.shakes})
        for (const Arc& arc : *arcs) {
            eachStep(arc.points, [&marks](const QRectF& at) { marks.insert(at, 0); });
            if (arcs == &layout.unions && !arc.signHidden) marks.insert(around(arc.sign, r), 0);
        }
    for (const HivePlace& h : layout.hives) // texts that made room for an arc
        for (const QRectF& text : {h.badge, h.laying, h.drop, layout.textsYield ? QRectF() : h.label})
            if (!text.isEmpty()) marks.insert(text, 0);
    for (size_t i = 0; i < layout.hives.size(); ++i) {
        HivePlace& h = layout.hives[i];
        if (layout.textsYield && layout.chosen == i) continue;
        if (layout.textsYield && !h.label.isEmpty() && !marks.free(h.label)) h.label = h.line = {};
        if (!h.line.isEmpty() && !marks.free(h.line)) shorten(h, i, texts, marks);
    }
    evenStrengths(texts, layout);
}

void placeSigns(const Scene& scene, const Texts& texts, Layout& layout) {
    Signs signs(scene, texts, layout);
    std::vector<size_t> order(layout.unions.size());
    for (size_t i = 0; i < order.size(); ++i) order[i] = i;
    const auto reach = [&](size_t i) {
        return QLineF(layout.unions[i].points.front(), layout.unions[i].points.back()).length();
    };
    std::ranges::stable_sort(order, {}, reach); // short arcs have the fewest spots
    for (const size_t i : order) signs.placeSign(i);
    yieldTexts(texts, layout);
    for (const size_t i : order) signs.placeMetres(i);
}

} // namespace ui::plan
