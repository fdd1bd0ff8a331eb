#include "core/model/fixed_shape.h"

#include <QStringList>

#include <algorithm>
#include <cmath>
#include <utility>

namespace core {

namespace {

std::optional<qint32> parseMm(QStringView text) {
    bool ok = false;
    const int value = text.toInt(&ok);
    if (!ok || QString::number(value) != text) return std::nullopt;
    return value;
}

/// Corners are whole millimetres: a turned rectangle is one to within their rounding.
bool isRectangle(const std::vector<MmPoint>& p) {
    constexpr double kRounding = 4; // mm
    const double side[2] = {double(p[1].x) - p[0].x, double(p[1].y) - p[0].y};
    const double next[2] = {double(p[2].x) - p[1].x, double(p[2].y) - p[1].y};
    const double closeX = double(p[0].x) + p[2].x - p[1].x - p[3].x;
    const double closeY = double(p[0].y) + p[2].y - p[1].y - p[3].y;
    const double length = std::hypot(side[0], side[1]);
    const double depth = std::hypot(next[0], next[1]);
    const double skew = std::abs(side[0] * next[0] + side[1] * next[1]);
    return std::abs(closeX) <= kRounding && std::abs(closeY) <= kRounding && skew <= kRounding * (length + depth);
}

} // namespace

QString pointsText(const std::vector<MmPoint>& points) {
    QStringList texts;
    for (const MmPoint p : points) texts << QStringLiteral("%1,%2").arg(p.x).arg(p.y);
    return texts.join(u' ');
}

std::optional<std::vector<MmPoint>> parsePoints(QStringView text) {
    std::vector<MmPoint> points;
    for (const QStringView part : text.split(u' ')) {
        const qsizetype comma = part.indexOf(u',');
        if (comma < 0) return std::nullopt;
        const auto x = parseMm(part.left(comma));
        const auto y = parseMm(part.mid(comma + 1));
        if (!x || !y) return std::nullopt;
        points.push_back({*x, *y});
    }
    return points;
}

int leastPoints(FixedKind kind) {
    switch (kind) {
    case FixedKind::Tree:
        return 1;
    case FixedKind::Water:
        return 3;
    case FixedKind::Shed:
        return 4;
    default:
        return 2;
    }
}

bool isArea(FixedKind kind) { return kind == FixedKind::Water || kind == FixedKind::Shed; }

std::optional<ShapeProblem> shapeProblem(FixedKind kind, const std::vector<MmPoint>& points) {
    const int count = static_cast<int>(points.size());
    if (count < leastPoints(kind)) return ShapeProblem::TooFewPoints;
    const bool exactly = kind == FixedKind::Tree || kind == FixedKind::Shed;
    if (count > (exactly ? leastPoints(kind) : kMostShapePoints)) return ShapeProblem::TooManyPoints;
    const auto tooFar = [](qint32 mm) { return mm < -kFarthestMm || mm > kFarthestMm; };
    for (const MmPoint p : points)
        if (tooFar(p.x) || tooFar(p.y)) return ShapeProblem::TooFar;
    if (std::adjacent_find(points.begin(), points.end()) != points.end()) return ShapeProblem::NoLength;
    if (isArea(kind) && points.front() == points.back()) return ShapeProblem::NoLength;
    if (kind == FixedKind::Shed && !isRectangle(points)) return ShapeProblem::NoRectangle;
    return std::nullopt;
}

std::vector<MmPoint> rectangleOf(MmPoint a, MmPoint b, MmPoint across) {
    const double sideX = double(b.x) - a.x;
    const double sideY = double(b.y) - a.y;
    const double length = std::hypot(sideX, sideY);
    if (length == 0) return {a, b, b, a};
    const double depth = (sideX * (double(across.y) - a.y) - sideY * (double(across.x) - a.x)) / length;
    const auto rounded = [](double v) { return static_cast<qint32>(std::lround(v)); };
    const MmPoint step{rounded(-sideY / length * depth), rounded(sideX / length * depth)};
    return {a, b, b + step, a + step};
}

} // namespace core
