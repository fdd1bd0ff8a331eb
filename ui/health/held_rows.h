#pragma once

#include "ui/board/board_rows.h"

#include <QString>

#include <vector>

namespace ui::health {

/// The holds of some yards as rows, a heading a yard, the gravest first; and how many hives there are held.
struct HeldRows {
    std::vector<board::BoardRow> rows;
    int held = 0;
    int hives = 0;
};

/// `yards`: in this order; those without a hold get no heading.
HeldRows heldRows(const desk::Reading& reading, const std::vector<core::YardIx>& yards);

/// What to do now where foulbrood is suspected or confirmed in these yards; empty: it is not.
QString alarmText(const desk::Reading& reading, const std::vector<core::YardIx>& yards);

} // namespace ui::health
