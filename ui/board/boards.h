#pragma once

#include <QCoreApplication>

namespace ui::board {

/// Translates what free functions of the board say.
struct Boards {
    Q_DECLARE_TR_FUNCTIONS(Boards)
};

} // namespace ui::board
