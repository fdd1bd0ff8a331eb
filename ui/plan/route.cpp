#include "ui/plan/route.h"

#include "ui/plan/curve.h"
#include "ui/plan/lattice.h"
#include "ui/plan/placer.h"
#include "ui/plan/signs.h"

#include <QLineF>
#include <QTransform>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace ui::plan {

namespace {

constexpr int kSamples = 36;
constexpr double kDetour = 1.35;   // a curve longer than this, of the straight way, is compared with a path
constexpr double kOverArc = 0.05;  // of the cost of a curve's length, to run over another arc
constexpr double kOverLine = 0.08; // the same for a strength, each step
constexpr double kUsualGap = 5;    // pixels between arcs and what they run past
constexpr double kLeastGap = 2.5;
constexpr double kBareGap = 0.5;
constexpr double kCheckEvery = 2; // pixels

/// Of the line through every third point of an arc.
double lengthOf(const std::vector<QPointF>& points) {
    double length = 0;
    for (size_t i = 0; i + 3 < points.size(); i += 3) length += QLineF(points[i], points[i + 3]).length();
    return length;
}

std::vector<QPointF> pointsOf(const Curve& c) { return {c.from, c.control1, c.control2, c.to}; }

struct Tried {
    double cost = std::numeric_limits<double>::max();
    double length = 0;
    bool clear = false;
    Curve curve;
};

class Router {
public:
    Router(const Scene& scene, Layout& layout)
        : m_scene(scene),
          m_layout(layout),
          m_hard(obstaclesOf(scene, layout, kUsualGap)),
          m_soft(layout.bounds.adjusted(-60, -60, 60, 60), 24),
          m_lines(layout.bounds.adjusted(-60, -60, 60, 60), 24) {
        for (const HivePlace& h : layout.hives)
            if (!h.line.isEmpty()) m_lines.insert(h.line.adjusted(-2, -1, 2, 1), 0);
    }

    void routeAll() {
        m_layout.shakes.assign(m_scene.shakes.size(), {});
        m_layout.unions.assign(m_scene.unions.size(), {});
        std::vector<size_t> order(m_scene.unions.size());
        std::iota(order.begin(), order.end(), size_t{0});
        std::stable_sort(order.begin(), order.end(), [&](size_t a, size_t b) { return reach(a) < reach(b); });
        for (size_t i = 0; i < m_scene.shakes.size(); ++i)
            route(m_layout.shakes[i], m_scene.shakes[i].colony, m_scene.shakes[i].into);
        for (size_t i : order) route(m_layout.unions[i], m_scene.unions[i].moved, m_scene.unions[i].host);
    }

private:
    double reach(size_t i) const {
        const UnionMark& u = m_scene.unions[i];
        return QLineF(m_layout.hives[u.moved].centre, m_layout.hives[u.host].centre).length();
    }

    void route(Arc& arc, size_t from, size_t to) {
        const Tried best = bestCurve(from, to);
        const double far = QLineF(m_layout.hives[from].centre, m_layout.hives[to].centre).length();
        const bool clear = best.clear && isClear(pointsOf(best.curve), from, to, m_hard);
        arc.points.clear();
        if (!clear || best.length > kDetour * far) arc.points = path(from, to);
        if (arc.points.empty() || (clear && lengthOf(arc.points) > 0.85 * best.length))
            arc.points = pointsOf(best.curve);
        const int owner = m_arcs++;
        for (size_t p = 0; p + 3 < arc.points.size(); p += 3) {
            const Curve c{arc.points[p], arc.points[p + 1], arc.points[p + 2], arc.points[p + 3]};
            for (int i = 0; i <= kSamples; ++i)
                m_soft.insert(QRectF(c.at(1.0 * i / kSamples) - QPointF(5, 5), QSizeF(10, 10)), owner);
        }
    }

    /// Over the lattice: with the usual gap, else with the least, else where texts stand that then have to move.
    std::vector<QPointF> path(size_t from, size_t to) {
        if (!m_tight) makeTight();
        if (auto way = pathOver({m_hard, *m_tight, m_nothing}, from, to); !way.empty()) return way;
        if (auto way = pathOver({*m_tight, *m_bare, m_nothing}, from, to); !way.empty()) return way;
        return pathOver({*m_bodies, *m_bareBodies, *m_texts}, from, to);
    }

    void makeTight() {
        m_tight.emplace(obstaclesOf(m_scene, m_layout, kLeastGap));
        m_bare.emplace(obstaclesOf(m_scene, m_layout, kBareGap));
        m_bodies.emplace(obstaclesOf(m_scene, m_layout, kLeastGap, Obstacles::Bodies));
        m_bareBodies.emplace(obstaclesOf(m_scene, m_layout, kBareGap, Obstacles::Bodies));
        m_texts.emplace(obstaclesOf(m_scene, m_layout, kLeastGap, Obstacles::Texts));
    }

    struct Grounds {
        const RectGrid& hard;  ///< the way is looked for around these
        const RectGrid& least; ///< and, once rounded, keeps clear of these
        const RectGrid& texts;
    };

    std::vector<QPointF> pathOver(const Grounds& g, size_t from, size_t to) const {
        for (const double around : {60.0, 600.0}) {
            std::vector<QPointF> way = latticePath({m_scene, m_layout, g.hard, m_lines, g.texts, around}, from, to);
            if (!way.empty() && isClear(way, from, to, g.least)) return way;
        }
        return {};
    }

    /// Nowhere over an obstacle, nor over its own hives but at its ends.
    bool isClear(const std::vector<QPointF>& points, size_t from, size_t to, const RectGrid& hard) const {
        for (size_t p = 0; p + 3 < points.size(); p += 3) {
            const Curve c{points[p], points[p + 1], points[p + 2], points[p + 3]};
            const double length = QLineF(c.from, c.control1).length() + QLineF(c.control1, c.control2).length() +
                                  QLineF(c.control2, c.to).length();
            const int steps = 2 + static_cast<int>(length / kCheckEvery);
            for (int i = 0; i <= steps; ++i) {
                const QPointF at = c.at(1.0 * i / steps);
                if (!hard.free(at, static_cast<int>(from), static_cast<int>(to)) || over(from, at, 1) ||
                    over(to, at, 1))
                    return false;
            }
        }
        return true;
    }

    bool over(size_t hive, const QPointF& p, double gap) const {
        return insideBody(m_scene.hives[hive], m_layout.hives[hive], p, gap);
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
        if (cost + 0.6 >= best.cost) return; // its length is no less
        const double far = std::max(QLineF(m_layout.hives[from].centre, m_layout.hives[to].centre).length(), 1.0);
        const double step = 1 / std::clamp(far / 7, 24.0, 160.0);
        double first = 0;
        double last = 1;
        while (first < 1 && over(from, whole.at(first), kLeave)) first += step / 4;
        while (last > first && over(to, whole.at(last), kArrive)) last -= step / 4;
        if (last - first < 0.12) return;
        int hits = 0;
        double length = 0;
        QPointF before = whole.at(first);
        for (double at = first; at <= last && cost < best.cost; at += step) {
            const QPointF p = whole.at(at);
            length += std::hypot((p - before).x(), (p - before).y());
            before = p;
            if (!m_hard.free(p, static_cast<int>(from), static_cast<int>(to))) cost += 1.5, ++hits;
            if (!m_soft.free(p)) cost += 60 * kOverArc * step;
            if (!m_lines.free(p)) cost += kOverLine;
        }
        cost += 0.7 * length / far;
        if (cost < best.cost) best = {cost, length, hits == 0, whole.part(first, last)};
    }

    const Scene& m_scene;
    Layout& m_layout;
    RectGrid m_hard;
    RectGrid m_nothing{QRectF(0, 0, 1, 1), 1};
    std::optional<RectGrid> m_tight, m_bare, m_bodies, m_bareBodies, m_texts;
    RectGrid m_soft;  ///< arcs
    RectGrid m_lines; ///< strengths
    int m_arcs = 0;
};

} // namespace

void routeArcs(const Scene& scene, const Texts& texts, Layout& layout) {
    Router(scene, layout).routeAll();
    if (!layout.textsYield) moveTexts(scene, texts, layout);
    placeSigns(scene, texts, layout);
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
    yieldTexts(texts, to);
}

} // namespace ui::plan
