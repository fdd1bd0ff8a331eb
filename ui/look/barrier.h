#pragma once

#include "ui/look/colours.h"

#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace ui::look {

constexpr int kBarrierWide = 36;

/// An orange frame with barrier hatching along its left edge and the hold's letter on it; the rest is paper.
void paintBarrier(QPainter& p, const QRectF& frame, const QString& letter, const QFont& font, const Colours& c);
/// A small orange triangle, 13 pixels wide, with its left top at `at`: a caution.
void paintCaution(QPainter& p, const QPointF& at, const Colours& c);

} // namespace ui::look
