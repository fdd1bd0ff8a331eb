#include "ui/plan/lattice.h"

#include "ui/plan/curve.h"

#include <QLineF>

#include <algorithm>
#include <array>
#include <cmath>
#include <queue>

namespace ui::plan {

namespace {

constexpr int kMostCells = 220; // along one side
constexpr float kNoWay = 1e6f;

class Lattice {
public:
    Lattice(const Terrain& ground, size_t from, size_t to)
        : m_ground(ground),
          m_from(ground.layout.hives[from]),
          m_to(ground.layout.hives[to]),
          m_fromOwner(static_cast<int>(from)),
          m_toOwner(static_cast<int>(to)) {
        const double margin = std::max(3 * m_from.size.height(), ground.around);
        m_area = QRectF(m_from.centre, m_to.centre).normalized().adjusted(-margin, -margin, margin, margin);
        m_cell = std::max({4.0, m_area.width() / kMostCells, m_area.height() / kMostCells});
        m_columns = static_cast<int>(m_area.width() / m_cell) + 1;
        m_rows = static_cast<int>(m_area.height() / m_cell) + 1;
        m_steps.assign(static_cast<size_t>(m_columns) * static_cast<size_t>(m_rows), 0);
    }

    /// Cell centres from the moved hive's centre to the host's; empty where there is no way.
    std::vector<QPointF> path() {
        const size_t cells = static_cast<size_t>(m_columns) * static_cast<size_t>(m_rows);
        std::vector<float> cost(cells, 1e9f);
        std::vector<int> before(cells, -1);
        using Step = std::pair<float, int>;
        std::priority_queue<Step, std::vector<Step>, std::greater<>> open;
        const int start = cellAt(m_from.centre);
        const int goal = cellAt(m_to.centre);
        cost[static_cast<size_t>(start)] = 0;
        open.push({0.0f, start});
        while (!open.empty()) {
            const int at = open.top().second;
            open.pop();
            if (at == goal) return walkBack(before, goal);
            for (int next : around(at)) {
                if (next < 0 || costAt(next) >= kNoWay) continue;
                const float c = cost[static_cast<size_t>(at)] + stepCost(at, next);
                if (c >= cost[static_cast<size_t>(next)]) continue;
                cost[static_cast<size_t>(next)] = c;
                before[static_cast<size_t>(next)] = at;
                open.push({c + static_cast<float>(QLineF(centre(next), m_to.centre).length() / m_cell), next});
            }
        }
        return {};
    }

    bool sees(const QPointF& a, const QPointF& b) const {
        const double length = QLineF(a, b).length();
        const int steps = std::max(2, static_cast<int>(length / 2));
        for (int i = 0; i <= steps; ++i)
            if (!free(a + (b - a) * i / steps)) return false;
        return true;
    }
    bool free(const QPointF& p) const { return m_ground.hard.free(p, m_fromOwner, m_toOwner); }
    /// How much of strengths and other texts the way between two points runs over.
    int crossed(const QPointF& a, const QPointF& b) const {
        const int steps = std::max(2, static_cast<int>(QLineF(a, b).length() / 6));
        int n = 0;
        for (int i = 0; i <= steps; ++i) n += weightAt(a + (b - a) * i / steps);
        return n;
    }

private:
    int cellAt(const QPointF& p) const {
        return static_cast<int>((p.y() - m_area.top()) / m_cell) * m_columns +
               static_cast<int>((p.x() - m_area.left()) / m_cell);
    }
    QPointF centre(int cell) const {
        return {m_area.left() + (cell % m_columns + 0.5) * m_cell, m_area.top() + (cell / m_columns + 0.5) * m_cell};
    }
    std::array<int, 8> around(int cell) const {
        std::array<int, 8> out{};
        size_t n = 0;
        const int c = cell % m_columns;
        const int r = cell / m_columns;
        for (int dr = -1; dr <= 1; ++dr)
            for (int dc = -1; dc <= 1; ++dc) {
                if (dr == 0 && dc == 0) continue;
                const bool in = c + dc >= 0 && c + dc < m_columns && r + dr >= 0 && r + dr < m_rows;
                out[n++] = in ? cell + dr * m_columns + dc : -1;
            }
        return out;
    }
    float stepCost(int from, int to) {
        const bool slant = from % m_columns != to % m_columns && from / m_columns != to / m_columns;
        return (slant ? 1.414f : 1.0f) * costAt(to);
    }
    /// Of a step into this cell; worked out once.
    float costAt(int cell) {
        float& cost = m_steps[static_cast<size_t>(cell)];
        if (cost == 0) cost = !free(centre(cell)) ? kNoWay : 1 + 1.5f * static_cast<float>(weightAt(centre(cell)));
        return cost;
    }
    int weightAt(const QPointF& p) const { return (m_ground.soft.free(p) ? 0 : 1) + (m_ground.texts.free(p) ? 0 : 12); }
    std::vector<QPointF> walkBack(const std::vector<int>& before, int goal) const {
        std::vector<QPointF> out;
        for (int at = goal; at >= 0; at = before[static_cast<size_t>(at)]) out.push_back(centre(at));
        std::reverse(out.begin(), out.end());
        out.front() = m_from.centre;
        out.back() = m_to.centre;
        return out;
    }

    const Terrain& m_ground;
    const HivePlace& m_from;
    const HivePlace& m_to;
    int m_fromOwner, m_toOwner;
    QRectF m_area;
    double m_cell = 5;
    int m_columns = 1;
    int m_rows = 1;
    std::vector<float> m_steps;
};

/// The straight way is free, and runs over no more strengths and arcs than the path does.
bool shortens(const Lattice& lattice, const std::vector<QPointF>& path, size_t at, size_t next) {
    if (!lattice.sees(path[at], path[next])) return false;
    const int straight = lattice.crossed(path[at], path[next]);
    int along = 0;
    for (size_t i = at; straight > along && i < next; ++i) along += lattice.crossed(path[i], path[i + 1]);
    return straight <= along;
}

/// Keeps only the corners that are needed: each sees the one after the next no more.
std::vector<QPointF> pulledTight(const Lattice& lattice, const std::vector<QPointF>& path) {
    std::vector<QPointF> out{path.front()};
    for (size_t at = 0; at + 1 < path.size();) {
        size_t next = path.size() - 1;
        while (next > at + 1 && !shortens(lattice, path, at, next)) --next;
        out.push_back(path[next]);
        at = next;
    }
    return out;
}

QPointF towards(const QPointF& from, const QPointF& to, double by) {
    const QLineF line(from, to);
    return line.length() < 1e-6 ? from : line.pointAt(std::min(1.0, by / line.length()));
}

/// Moves an end from its hive's centre to its edge.
void clipEnd(QPointF& end, const QPointF& next, const Terrain& ground, size_t hive, double gap) {
    const QLineF line(end, next);
    const double step = std::min(0.1, 0.5 / std::max(line.length(), 1.0));
    for (double t = 0; t <= 1; t += step)
        if (!insideBody(ground.scene.hives[hive], ground.layout.hives[hive], line.pointAt(t), gap)) {
            end = line.pointAt(t);
            return;
        }
}

struct Bend {
    QPointF in, control1, control2, out;
};

Bend bendAt(const QPointF& before, const QPointF& corner, const QPointF& after, double radius) {
    const double r = std::min({radius, QLineF(before, corner).length() / 2, QLineF(corner, after).length() / 2});
    const QPointF in = towards(corner, before, r);
    const QPointF out = towards(corner, after, r);
    return {in, in + (corner - in) * 0.6, out + (corner - out) * 0.6, out};
}

bool clear(const Lattice& lattice, const Bend& b) {
    const Curve c{b.in, b.control1, b.control2, b.out};
    for (int i = 0; i < 8; ++i)
        if (!lattice.sees(c.at(i / 8.0), c.at((i + 1) / 8.0))) return false;
    return true;
}

/// Corners rounded as widely as the ground is free.
std::vector<QPointF> rounded(const Lattice& lattice, const std::vector<QPointF>& corners) {
    std::vector<QPointF> out{corners.front()};
    const auto lineTo = [&out](const QPointF& p) {
        const QPointF a = out.back();
        out.insert(out.end(), {a + (p - a) / 3, a + (p - a) * 2 / 3, p});
    };
    for (size_t i = 1; i + 1 < corners.size(); ++i) {
        Bend bend = bendAt(corners[i - 1], corners[i], corners[i + 1], 2);
        for (const double radius : {220.0, 130.0, 80.0, 50.0, 30.0, 18.0, 10.0, 5.0}) {
            const Bend wide = bendAt(corners[i - 1], corners[i], corners[i + 1], radius);
            if (!clear(lattice, wide)) continue;
            bend = wide;
            break;
        }
        lineTo(bend.in);
        out.insert(out.end(), {bend.control1, bend.control2, bend.out});
    }
    lineTo(corners.back());
    return out;
}

/// No corner but the ends lies in the two hives.
void leaveHives(std::vector<QPointF>& corners, const Terrain& ground, size_t from, size_t to) {
    const auto in = [&ground](size_t hive, const QPointF& p, double gap) {
        return insideBody(ground.scene.hives[hive], ground.layout.hives[hive], p, gap);
    };
    while (corners.size() > 2 && in(from, corners[1], kLeave)) corners.erase(corners.begin() + 1);
    while (corners.size() > 2 && in(to, corners[corners.size() - 2], kArrive)) corners.erase(corners.end() - 2);
}

} // namespace

std::vector<QPointF> latticePath(const Terrain& ground, size_t from, size_t to) {
    Lattice lattice(ground, from, to);
    const std::vector<QPointF> path = lattice.path();
    if (path.size() < 2) return {};
    std::vector<QPointF> corners = pulledTight(lattice, path);
    leaveHives(corners, ground, from, to);
    clipEnd(corners.front(), corners[1], ground, from, kLeave);
    clipEnd(corners.back(), corners[corners.size() - 2], ground, to, kArrive);
    return rounded(lattice, corners);
}

} // namespace ui::plan
