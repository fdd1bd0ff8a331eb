#pragma once

#include "ui/board/board_rows.h"
#include "ui/look/colours.h"

class QPainter;

namespace ui::board {

constexpr double kAskSign = 13; ///< pixels wide and high

/// A pin, a struck circle, an open stand or a turning arrow; told apart by shape alone.
void paintAskSign(QPainter& p, const QPointF& at, AskSign sign, const look::Colours& c);

} // namespace ui::board
