#pragma once

#include "ui/look/colours.h"
#include "ui/plan/camera.h"
#include "ui/plan/layout.h"

class QPainter;

namespace ui::plan {

// All of these draw in the view's own pixels.

/// Paper, a fine line a metre (or foot) (while there is room) and a bold one each five, or each 10 · 10^n further away.
void paintGrid(QPainter& p, const Camera& camera, core::LengthUnit unit, const look::Colours& c);
/// `word` beside it; empty: in the window's language.
void paintGate(QPainter& p, const Camera& camera, core::MmPoint gate, const QFont& font, const look::Colours& c,
               const QString& word = {});
/// The outline of a hive that is not there, with the stand's name while there is room.
void paintStand(QPainter& p, const Camera& camera, const StandMark& stand, double magnified, const QFont& font,
                const look::Colours& c);
/// North arrow at the top right, scale bar at the bottom right.
void paintNorth(QPainter& p, const Camera& camera, const QFont& font, const look::Colours& c);
void paintScaleBar(QPainter& p, const Camera& camera, core::LengthUnit unit, const QFont& font, const look::Colours& c);
/// A round length that is 90 to 230 pixels long: 1, 2 or 5 · 10^n of the unit.
double scaleBarLength(double pixelsPerUnit);

} // namespace ui::plan
