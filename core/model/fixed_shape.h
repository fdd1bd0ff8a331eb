#pragma once

#include "core/base/quantity.h"
#include "core/model/words.h"

#include <QString>

#include <optional>
#include <vector>

namespace core {

constexpr int kMostShapePoints = 200;
constexpr qint32 kLeastRadiusMm = 100;
constexpr qint32 kMostRadiusMm = 50'000;
constexpr qint32 kFarthestMm = 10'000'000; ///< from a yard's origin, east or north

/// The points of a fixed thing as the store keeps them: "0,0 1500,-250".
QString pointsText(const std::vector<MmPoint>& points);
/// Exactly what pointsText() writes; nullopt for any other text.
std::optional<std::vector<MmPoint>> parsePoints(QStringView text);

enum class ShapeProblem {
    TooFewPoints,
    TooManyPoints,
    TooFar,     ///< a point beyond kFarthestMm
    NoLength,   ///< two points in a row at one place
    NoRectangle ///< the corners of a shed
};
/// Why these points are no shape of that kind; nullopt: they are.
std::optional<ShapeProblem> shapeProblem(FixedKind kind, const std::vector<MmPoint>& points);

/// Fewest points that draw such a thing.
int leastPoints(FixedKind kind);
/// One whose last point joins the first.
bool isArea(FixedKind kind);

/// The rectangle whose first side runs from a to b, and whose opposite side passes through `across`; in turn.
std::vector<MmPoint> rectangleOf(MmPoint a, MmPoint b, MmPoint across);

} // namespace core
