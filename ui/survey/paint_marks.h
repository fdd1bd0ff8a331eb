#pragma once

#include "ui/look/colours.h"

#include <QPainter>
#include <QPointF>
#include <QString>

// What a survey draws over the plan, in the view's pixels.

namespace ui::survey {

/// With ticks at its ends, as on a drawing, and the text in the middle.
void paintDimension(QPainter& p, const QPointF& from, const QPointF& to, const QString& text, const look::Colours& c);
/// Where the keys point.
void paintCross(QPainter& p, const QPointF& at, const look::Colours& c);
void paintHandle(QPainter& p, const QPointF& at, bool held, const look::Colours& c);
/// On blue, above the point.
void paintBubble(QPainter& p, const QPointF& at, const QString& text, const look::Colours& c);
/// A stand where it is to go, with a dashed line from where it is.
void paintMove(QPainter& p, const QPointF& from, const QPointF& to, double half, const look::Colours& c);
/// How a hive would be turned: its heading as an arrow.
void paintHeading(QPainter& p, const QPointF& at, int headingDeg, double length, const look::Colours& c);

} // namespace ui::survey
