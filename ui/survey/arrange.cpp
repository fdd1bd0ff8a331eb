#include "ui/survey/arrange.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace ui::survey {

namespace {

using core::MmPoint;

struct Vec {
    double x = 0;
    double y = 0;
};

Vec vec(MmPoint p) { return {double(p.x), double(p.y)}; }
double dot(Vec a, Vec b) { return a.x * b.x + a.y * b.y; }
MmPoint rounded(double x, double y) {
    return {static_cast<qint32>(std::lround(x)), static_cast<qint32>(std::lround(y))};
}

/// Direction of the line of the first and the last; no length where they are at one place.
Vec lineOf(const Places& at) {
    const Vec way{double(at.back().x) - at.front().x, double(at.back().y) - at.front().y};
    const double length = std::hypot(way.x, way.y);
    return length == 0 ? Vec{} : Vec{way.x / length, way.y / length};
}

/// One direction and which row each place is in.
struct Rows {
    Vec along;
    std::vector<int> row; ///< of each place
    int count = 0;
    double cost = 1e300;
};

std::vector<double> middles(const Places& at, const Rows& rows, Vec across) {
    std::vector<double> sum(static_cast<size_t>(rows.count), 0);
    std::vector<int> number(static_cast<size_t>(rows.count), 0);
    for (size_t i = 0; i < at.size(); ++i) {
        sum[static_cast<size_t>(rows.row[i])] += dot(vec(at[i]), across);
        ++number[static_cast<size_t>(rows.row[i])];
    }
    for (size_t r = 0; r < sum.size(); ++r) sum[r] /= number[r];
    return sum;
}

/// Rows of that direction: a new one begins where the next place lies more than half a metre further off.
Rows rowsAlong(const Places& at, double radians) {
    constexpr double kGap = 500;
    constexpr double kRow = 500.0 * 500.0; // mm²: what a row more must save
    Rows rows;
    rows.along = {std::cos(radians), std::sin(radians)};
    const Vec across{-rows.along.y, rows.along.x};
    std::vector<size_t> order(at.size());
    std::iota(order.begin(), order.end(), size_t{0});
    std::ranges::sort(order, {}, [&](size_t i) { return dot(vec(at[i]), across); });
    rows.row.resize(at.size());
    for (size_t k = 0; k < order.size(); ++k) {
        const bool apart = k > 0 && dot(vec(at[order[k]]), across) - dot(vec(at[order[k - 1]]), across) > kGap;
        if (k == 0 || apart) ++rows.count;
        rows.row[order[k]] = rows.count - 1;
    }
    const auto middle = middles(at, rows, across);
    rows.cost = kRow * rows.count;
    for (size_t i = 0; i < at.size(); ++i)
        rows.cost += std::pow(dot(vec(at[i]), across) - middle[static_cast<size_t>(rows.row[i])], 2);
    return rows;
}

Rows bestRows(const Places& at) {
    constexpr int kSteps = 720;
    Rows best;
    for (int i = 0; i < kSteps; ++i) {
        Rows rows = rowsAlong(at, std::numbers::pi * i / kSteps);
        if (rows.cost < best.cost - 1) best = std::move(rows);
    }
    return best;
}

} // namespace

Places onWestEast(const Places& at) {
    Places out = at;
    if (at.size() < 2) return out;
    const double sum = std::accumulate(at.begin(), at.end(), 0.0, [](double s, MmPoint p) { return s + p.y; });
    for (MmPoint& p : out) p.y = static_cast<qint32>(std::lround(sum / static_cast<double>(at.size())));
    return out;
}

Places onNorthSouth(const Places& at) {
    Places out = at;
    if (at.size() < 2) return out;
    const double sum = std::accumulate(at.begin(), at.end(), 0.0, [](double s, MmPoint p) { return s + p.x; });
    for (MmPoint& p : out) p.x = static_cast<qint32>(std::lround(sum / static_cast<double>(at.size())));
    return out;
}

Places onTheirLine(const Places& at) {
    Places out = at;
    if (at.size() < 2) return out;
    const Vec along = lineOf(at);
    for (size_t i = 1; i + 1 < at.size(); ++i) {
        const double t = dot(vec(at[i] - at.front()), along);
        if (dot(along, along) > 0) out[i] = rounded(at.front().x + t * along.x, at.front().y + t * along.y);
    }
    return out;
}

Places evenly(const Places& at) {
    Places out = at;
    if (at.size() < 3) return out;
    const Vec along = lineOf(at);
    if (dot(along, along) == 0) return out;
    std::vector<size_t> order(at.size());
    std::iota(order.begin(), order.end(), size_t{0});
    const auto t = [&](size_t i) { return dot(vec(at[i]), along); };
    std::ranges::stable_sort(order, {}, t);
    const double first = t(order.front());
    const double step = (t(order.back()) - first) / static_cast<double>(at.size() - 1);
    for (size_t k = 1; k + 1 < order.size(); ++k) {
        const double by = first + step * static_cast<double>(k) - t(order[k]);
        out[order[k]] = rounded(at[order[k]].x + by * along.x, at[order[k]].y + by * along.y);
    }
    return out;
}

Places inRows(const Places& at) {
    Places out = at;
    if (at.size() < 2) return out;
    const Rows rows = bestRows(at);
    const Vec across{-rows.along.y, rows.along.x};
    const auto middle = middles(at, rows, across);
    for (size_t i = 0; i < at.size(); ++i) {
        const double by = middle[static_cast<size_t>(rows.row[i])] - dot(vec(at[i]), across);
        out[i] = rounded(at[i].x + by * across.x, at[i].y + by * across.y);
    }
    return out;
}

int rowsOf(const Places& at) { return at.empty() ? 0 : at.size() < 2 ? 1 : bestRows(at).count; }

} // namespace ui::survey
