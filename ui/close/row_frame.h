#pragma once

#include "ui/look/colours.h"

#include <QRectF>

class QPainter;
class QStyleOptionViewItem;

namespace ui::close {

/// A row's own ground: framed where it is chosen, thicker with the keys; else ruled off below, if `ruled`.
void paintRowFrame(QPainter& p, const QStyleOptionViewItem& option, const QRectF& area, const look::Colours& c,
                   bool ruled);

} // namespace ui::close
