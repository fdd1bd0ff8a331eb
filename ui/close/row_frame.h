#pragma once

#include "ui/look/colours.h"

#include <QRectF>

class QPainter;
class QStyleOptionViewItem;

namespace ui::close {

/// A row's own ground: framed where it is chosen, thicker with the keys; else ruled off below, if `ruled`.
void paintRowFrame(QPainter& p, const QStyleOptionViewItem& option, const QRectF& area, const look::Colours& c,
                   bool ruled);

/// Draws words, broken into lines (without a painter, only measures them); the height that they take.
double wordsIn(QPainter* p, const QRectF& room, const QString& words, const QFont& font, const QColor& colour);

} // namespace ui::close
