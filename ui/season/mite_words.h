#pragma once

#include "core/rules/season_mites.h"
#include "ui/season/season_desk.h"
#include "ui/season/shown.h"

#include <QString>

#include <vector>

// What is said and drawn of mite samples, on the pages of the season and of health.

namespace ui::season {

QString oneDecimal(double value);
QString rangeText(const core::rules::calc::Range& range); ///< "0.8 to 3.4"
QString sampledText(const core::rules::MiteWeek& week); ///< "9 of 11 hives sampled"
/// "2.1 mites in 100 bees (95 % interval 0.8 to 3.4)"
QString rateText(const core::rules::MiteWeek& week);
/// What the samples say of their threshold.
QString verdictText(const core::rules::MiteWeek& week);
QString enoughText();   ///< how many hives of a yard to sample, with the source
QString decidersText(); ///< who decides what is done about mites
/// Weeks, with their intervals; without thresholds.
chart::Chart miteWeeksChart(SeasonDesk& desk, const std::vector<core::rules::MiteWeek>& weeks);

} // namespace ui::season
