#pragma once

#include "core/exchange/text_source.h"

#include <QByteArray>

#include <array>
#include <optional>
#include <vector>

// Cells of files that other programs wrote, turned into what our own files hold.

namespace core::exchange {

/// The first `most` rows, header included; rows with trouble and blank lines are passed over.
std::vector<std::vector<QByteArray>> firstRows(const QByteArray& text, char separator, size_t most);

/// Three whole numbers between - / or . as a day has them; "2026-9-3", "3.9.2026", "9/3/26".
std::optional<std::array<QByteArray, 3>> numberParts(const QByteArray& cell);

/// The day in ISO, where the cell is one in that order; else as it is, for the reader to refuse. Years of two digits
/// are of this century; what follows a day (a time) is cut where it is parted by a blank or T.
QByteArray isoDayCell(const QByteArray& cell, DayOrder order);

/// With a decimal point, and without marks between thousands where they are unmistakable (1'234.5).
QByteArray numberCell(const QByteArray& cell, DecimalMark decimal);

/// The number in another unit: times `factor`, to six decimals. What is no number stays, for the reader to refuse.
QByteArray scaledCell(const QByteArray& cell, double factor);

} // namespace core::exchange
