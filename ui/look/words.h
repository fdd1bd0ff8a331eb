#pragma once

#include "core/base/day.h"
#include "core/base/quantity.h"
#include "core/base/shown_units.h"

#include <QString>

namespace ui::look {

/// "15 Sep 2026", "15 Sep"
QString dayText(core::Day day);
QString shortDayText(core::Day day);
/// Short, with its year where that is not the year of `on`.
QString dayTextFrom(core::Day day, core::Day on);
/// "5.25 frames", "1 frame"
QString framesOf(core::Quarters q);
/// "4.0 m", "13.1 ft", with the decimal point on every screen
QString distanceOf(core::MmPoint from, core::MmPoint to, core::LengthUnit unit);
/// "9.5 L", "10 qt" of half litres
QString feedOf(int halfLitres, core::VolumeUnit unit);
/// "29.2 kg", "64.4 lb" of a hive on the scale
QString weightOf(core::Decagrams weight, core::WeightUnit unit);
/// "6 kg", "13.2 lb" that a hive is short of
QString shortWeightOf(qint64 millionthsKg, core::WeightUnit unit);
/// "2.0 m east", "11.8 ft south-west"
QString wayText(core::MmPoint from, core::MmPoint to, core::LengthUnit unit);
/// Something not recorded.
QString dash();

} // namespace ui::look
