#include "ui/plan/route.h"

#include "ui/plan/curve.h"
#include "ui/plan/lattice.h"
#include "ui/plan/sprites.h"

#include <QLineF>
#include <QTransform>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>

namespace ui::plan {

namespace {

constexpr int kSamples = 36;
constexpr double kDetour = 1.35; // a curve longer than this, of the straight way, is compared with a path
constexpr double kLeave = 5;     // pixels between a hive's edge and the end of an arc
constexpr double kArrive = 6;
constexpr double kSoft = 0.05; // of the cost of a curve's length, to run over another arc

bool inside(const HivePlace& h, int headingDeg, const QPointF& p, double gap) {
    const QPointF local = QTransform().rotate(180 - headingDeg).map(p - h.centre);
    return std::abs(local.x()) < h.size.width() / 2 + gap && std::abs(local.y()) < h.size.height() / 2 + gap;
}

/// Of the line through every third point of an arc.
double lengthOf(const std::vector<QPointF>& points) {
    double length = 0;
    for (size_t i = 0; i + 3 < points.size(); i += 3) length += QLineF(points[i], points[i + 3]).length();
    return length;
}

struct Tried {
    double cost = std::numeric_limits<double>::max();
    double length = 0;
    bool clear = false;
    Curve curve;
};

class Router {
public:
    Router(const Scene& scene, const Texts& texts, Layout& layout)
        : m_scene(scene),
          m_texts(texts),
          m_layout(layout),
          m_hard(obstaclesOf(layout)),
          m_soft(layout.bounds.adjusted(-60, -60, 60, 60), 24),
          m_sign(signRadius(layout.detail == Detail::Combs ? texts.badgeFont() : texts.lineFont())) {}

    void routeAll() {
        m_layout.shakes.assign(m_scene.shakes.size(), {});
        m_layout.unions.assign(m_scene.unions.size(), {});
        for (size_t i = 0; i < m_scene.shakes.size(); ++i)
            route(m_layout.shakes[i], m_scene.shakes[i].colony, m_scene.shakes[i].into);
        std::vector<size_t> order(m_scene.unions.size());
        std::iota(order.begin(), order.end(), size_t{0});
        std::stable_sort(order.begin(), order.end(), [&](size_t a, size_t b) { return reach(a) < reach(b); });
        for (size_t i : order) {
            Arc& arc = m_layout.unions[i];
            route(arc, m_scene.unions[i].moved, m_scene.unions[i].host);
            placeSign(arc, m_scene.unions[i]);
        }
    }

private:
    double reach(size_t i) const {
        const UnionMark& u = m_scene.unions[i];
        return QLineF(m_layout.hives[u.moved].centre, m_layout.hives[u.host].centre).length();
    }

    void route(Arc& arc, size_t from, size_t to) {
        Tried best = bestCurve(from, to);
        arc.points.clear();
        const double far = QLineF(m_layout.hives[from].centre, m_layout.hives[to].centre).length();
        if (!best.clear || best.length > kDetour * far) arc.points = latticePath(m_layout, m_hard, from, to);
        if (best.clear && lengthOf(arc.points) > 0.85 * best.length) arc.points.clear();
        if (arc.points.empty()) arc.points = {best.curve.from, best.curve.control1, best.curve.control2, best.curve.to};
        const int owner = m_arcs++;
        for (size_t p = 0; p + 3 < arc.points.size(); p += 3) {
            const Curve c{arc.points[p], arc.points[p + 1], arc.points[p + 2], arc.points[p + 3]};
            for (int i = 0; i <= kSamples; ++i)
                m_soft.insert(QRectF(c.at(1.0 * i / kSamples) - QPointF(5, 5), QSizeF(10, 10)), owner);
        }
    }

    Tried bestCurve(size_t from, size_t to) const {
        Tried best;
        for (double reachOut : {0.38, 0.62, 0.9})
            for (double a : {0., 20., -20., 42., -42., 66., -66., 95., -95.})
                for (double b : {-a, 0., -a / 2, a / 2, a, -a * 1.6}) tryCurve(best, from, to, {a, b, reachOut});
        return best;
    }

    struct Bend {
        double a, b, reachOut;
    };

    void tryCurve(Tried& best, size_t from, size_t to, const Bend& bend) const {
        const HivePlace& f = m_layout.hives[from];
        const HivePlace& t = m_layout.hives[to];
        const QPointF way = t.centre - f.centre;
        const double far = std::max(std::hypot(way.x(), way.y()), 1.0);
        const double arm = std::max(far, 1.6 * f.size.height()) * bend.reachOut / far;
        const QPointF out = QTransform().rotate(bend.a).map(way) * arm;
        const QPointF in = QTransform().rotate(bend.b).map(-way) * arm;
        const Curve whole{f.centre, f.centre + out, t.centre + in, t.centre};
        double cost = (std::abs(bend.a) + std::abs(bend.b)) / 260 + std::abs(bend.a + bend.b) / 220 +
                      (bend.reachOut > 0.4 ? 0.1 * bend.reachOut : 0);
        if (bend.a == 0 && bend.b == 0) cost += 0.3; // a bow is told from a line of the grid
        weigh(best, cost, whole, from, to);
    }

    void weigh(Tried& best, double cost, const Curve& whole, size_t from, size_t to) const {
        const HivePlace& f = m_layout.hives[from];
        const HivePlace& t = m_layout.hives[to];
        const double far = std::max(std::hypot((t.centre - f.centre).x(), (t.centre - f.centre).y()), 1.0);
        const double step = 1 / std::clamp(far / 7, 24.0, 160.0);
        double first = 0;
        double last = 1;
        while (first < 1 && inside(f, m_scene.hives[from].headingDeg, whole.at(first), kLeave)) first += step / 4;
        while (last > first && inside(t, m_scene.hives[to].headingDeg, whole.at(last), kArrive)) last -= step / 4;
        if (last - first < 0.12) return;
        int hits = 0;
        double length = 0;
        QPointF before = whole.at(first);
        for (double at = first; at <= last && cost < best.cost; at += step) {
            const QPointF p = whole.at(at);
            length += std::hypot((p - before).x(), (p - before).y());
            before = p;
            if (!m_hard.free(p, static_cast<int>(from), static_cast<int>(to))) cost += 1.5, ++hits;
            if (!m_soft.free(p)) cost += 60 * kSoft * step;
        }
        cost += 0.7 * length / far;
        if (cost < best.cost) best = {cost, length, hits == 0, whole.part(first, last)};
    }

    /// Where the number may stand, the best first: on the arc; beside a short one, which would vanish beneath it.
    std::vector<QPointF> signSpots(const Arc& arc, size_t pieces) const {
        std::vector<QPointF> spots;
        const bool isShort = QLineF(arc.points.front(), arc.points.back()).length() < 6 * m_sign;
        const double away = m_sign + 3;
        const QPointF middle = pointAt(arc, pieces, 0.5);
        if (isShort)
            for (const QPointF& off : {QPointF(0, -away), QPointF(0, away), QPointF(away, 0), QPointF(-away, 0),
                                       QPointF(away, -away), QPointF(-away, -away)})
                spots.push_back(middle + off);
        for (double t : {0.5, 0.46, 0.54, 0.43, 0.57, 0.39, 0.61, 0.36, 0.64, 0.32, 0.68, 0.29, 0.71, 0.25, 0.75, 0.22,
                         0.78, 0.17, 0.83}) {
            if (!isShort) spots.push_back(pointAt(arc, pieces, t));
        }
        for (double t : {0.5, 0.4, 0.6, 0.3, 0.7})
            for (const double side : {-m_sign, m_sign})
                for (const QPointF& off : {QPointF(0, side), QPointF(side, 0)})
                    spots.push_back(pointAt(arc, pieces, t) + off);
        return spots;
    }

    /// The first spot clear of everything, else of hives and texts, else none.
    std::optional<QPointF> bestSign(const std::vector<QPointF>& spots, int owner) const {
        for (const bool arcsToo : {true, false})
            for (const QPointF& p : spots) {
                const double r = m_sign + (arcsToo ? 2 : 0);
                const QRectF round(p - QPointF(r, r), QSizeF(2 * r, 2 * r));
                if (m_hard.free(round) && (!arcsToo || m_soft.free(round, owner))) return p;
            }
        return std::nullopt;
    }

    void placeSign(Arc& arc, const UnionMark& u) {
        const int owner = m_arcs - 1;
        const size_t pieces = arc.points.size() / 3;
        const std::vector<QPointF> spots = signSpots(arc, pieces);
        const auto spot = bestSign(spots, owner);
        arc.sign = spot.value_or(spots.front());
        arc.signHidden = !spot && m_layout.textsYield;
        if (arc.signHidden) return;
        const int mine = static_cast<int>(2 * m_scene.hives.size()) + owner;
        m_hard.insert(QRectF(arc.sign - QPointF(m_sign + 1, m_sign + 1), QSizeF(2 * m_sign + 2, 2 * m_sign + 2)), mine);
        const QSizeF size(m_texts.width(u.metres), m_texts.lineHeight());
        const double h = size.height();
        const QPointF c = arc.sign;
        for (const QPointF& beside :
             {c + QPointF(-size.width() / 2, -m_sign - h - 1), c + QPointF(m_sign + 4, -h / 2),
              c + QPointF(-m_sign - 4 - size.width(), -h / 2), c + QPointF(-size.width() / 2, m_sign + 1),
              c + QPointF(m_sign, -m_sign - h + 2), c + QPointF(-m_sign - size.width(), -m_sign - h + 2),
              c + QPointF(m_sign, m_sign - 2), c + QPointF(-m_sign - size.width(), m_sign - 2)}) {
            const QRectF rect(beside, size);
            if (!m_hard.free(rect) || !m_soft.free(rect)) continue;
            arc.metres = rect;
            m_hard.insert(rect.adjusted(-2, 0, 2, 0), mine);
            return;
        }
    }

    static QPointF pointAt(const Arc& arc, size_t pieces, double t) {
        const double along = t * static_cast<double>(pieces);
        const size_t piece = std::min(static_cast<size_t>(along), pieces - 1);
        const QPointF* p = &arc.points[3 * piece];
        return Curve{p[0], p[1], p[2], p[3]}.at(along - static_cast<double>(piece));
    }

    const Scene& m_scene;
    const Texts& m_texts;
    Layout& m_layout;
    RectGrid m_hard;
    RectGrid m_soft;
    int m_arcs = 0;
    const double m_sign; ///< radius of the number's circle
};

} // namespace

/// Texts that an arc or a number would cross are hidden; the chosen hive's stay.
static void yieldTexts(Layout& layout, const Texts& texts) {
    if (!layout.textsYield) return;
    RectGrid grid(layout.bounds.adjusted(-60, -60, 60, 60), 24);
    for (size_t i = 0; i < layout.hives.size(); ++i) {
        if (layout.chosen == i) continue;
        if (!layout.hives[i].label.isEmpty()) grid.insert(layout.hives[i].label, static_cast<int>(2 * i));
        if (!layout.hives[i].line.isEmpty()) grid.insert(layout.hives[i].line, static_cast<int>(2 * i + 1));
    }
    const auto hide = [&layout](int owner) {
        HivePlace& h = layout.hives[static_cast<size_t>(owner / 2)];
        h.line = {};
        if (owner % 2 == 0) h.label = {};
    };
    const double r = signRadius(texts.lineFont()) + 1;
    for (const std::vector<Arc>* arcs : {&layout.unions, &layout.shakes})
        for (const Arc& arc : *arcs) {
            for (size_t p = 0; p + 3 < arc.points.size(); p += 3) {
                const Curve c{arc.points[p], arc.points[p + 1], arc.points[p + 2], arc.points[p + 3]};
                const int steps = std::clamp(static_cast<int>(QLineF(c.from, c.to).length() / 7), 4, 60);
                for (int i = 0; i <= steps; ++i)
                    grid.each(QRectF(c.at(1.0 * i / steps) - QPointF(2, 2), QSizeF(4, 4)), hide);
            }
            if (arcs == &layout.unions && !arc.signHidden)
                grid.each(QRectF(arc.sign - QPointF(r, r), QSizeF(2 * r, 2 * r)), hide);
        }
}

void routeArcs(const Scene& scene, const Texts& texts, Layout& layout) {
    Router(scene, texts, layout).routeAll();
    yieldTexts(layout, texts);
}

void scaleArcs(const Layout& routed, const Texts& texts, Layout& to) {
    const double k = to.pixelsPerMetre / routed.pixelsPerMetre;
    const auto scaled = [k](std::vector<Arc> arcs) {
        for (Arc& a : arcs) {
            for (QPointF& p : a.points) p *= k;
            a.sign *= k;
            if (!a.metres.isEmpty()) a.metres.moveCenter(a.metres.center() * k);
        }
        return arcs;
    };
    to.unions = scaled(routed.unions);
    to.shakes = scaled(routed.shakes);
    yieldTexts(to, texts);
}

} // namespace ui::plan
