#pragma once

#include "ui/desk/reading.h"

#include <QString>

namespace ui::board {

/// Two living colonies by their labels.
struct PairTyped {
    core::ColonyIx a, b;
    QString problem; ///< one sentence where it is not two; empty: it is
};
/// "K2 + K7", "K2 K7", "K2, K7"; case folds. A label may hold a sign or a blank of its own: where a "+" stands between
/// two labels of the book it parts them.
PairTyped pairTyped(const desk::Reading& reading, const QString& typed);

} // namespace ui::board
