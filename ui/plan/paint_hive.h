#pragma once

#include "ui/look/colours.h"
#include "ui/plan/layout.h"

class QPainter;

namespace ui::plan {

enum class Emphasis { None, Selected, Chosen, ChosenWithFocus, Ghost };

/// The one painter of hives from above; draws at `place` in layout pixels.
void paintHive(QPainter& p, const HiveMark& mark, const HivePlace& place, Detail detail, const look::Colours& c);
/// The blue frame of the chosen hive; of one selected with it the corners alone.
void paintFrame(QPainter& p, const HivePlace& place, Emphasis emphasis, const look::Colours& c);
/// Only its outline, dashed: where it stood before it was picked up.
void paintGhost(QPainter& p, const HiveMark& mark, const HivePlace& place, const look::Colours& c);
/// Label, lesser text, letters, drop.
void paintTexts(QPainter& p, const HiveMark& mark, const HivePlace& place, const Texts& texts, size_t hive,
                core::VolumeUnit volume, const look::Colours& c);
void paintBadge(QPainter& p, const QRectF& rect, const QString& letters, bool warns, const QFont& font,
                const look::Colours& c);
/// A drop of syrup whose bounding box is about 10 × 14 pixels, its tip at `tip`.
void paintDrop(QPainter& p, const QPointF& tip, const look::Colours& c);
/// Barrier hatching over the convex `area`, a line each `every` pixels.
void hatch(QPainter& p, const QPolygonF& area, double every, const look::Colours& c);

} // namespace ui::plan
