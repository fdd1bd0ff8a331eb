#pragma once

#include "core/rules/plan_difference.h"

#include <QString>
#include <QStringList>

namespace ui::board {

/// "Now 5 unions, gain 2.31; before 6 unions, gain 2.40.", "Still 5 unions, gain 2.31.", or that
/// the plan stays as it was.
QString differenceHead(const core::rules::PlanDifference& d);
/// A line a kind: "Went: K2 → K4 (0.35).", "Came: …", "Alone now: K4 (at risk).". Of each kind at most so many, then
/// how many more; 0: all.
QStringList differenceLines(const core::rules::PlanDifference& d, qsizetype most = 0);
/// Thousandths of a spring colony to two places: "0.35".
QString gainText(qint64 thousandths);

} // namespace ui::board
