#pragma once

#include "core/base/day.h"
#include "core/base/quantity.h"

#include <QString>

namespace ui::look {

/// "15 Sep 2026", "15 Sep"
QString dayText(core::Day day);
QString shortDayText(core::Day day);
/// "5.25 frames", "1 frame"
QString framesOf(core::Quarters q);
/// "4.0 m" of tenths of a metre, with the decimal point on every screen
QString metresOf(qint64 tenths);
/// "9.5 L" of half litres
QString litresOf(int halfLitres);
/// "2.0 m east", "3.6 m south-west"
QString wayText(core::MmPoint from, core::MmPoint to);
/// Something not recorded.
QString dash();

} // namespace ui::look
