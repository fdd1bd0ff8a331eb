#pragma once

#include "core/edit/correction_touch.h"
#include "core/model/snapshot.h"

namespace core::edit {

/// The most days on which one change is judged.
constexpr size_t kMostJudgedDays = 12;

/// The days on which a hold may stand that rests on what is touched. `latest`: the book on a day from which nothing
/// later is known. `today` and that day are among them, then those of the touched records themselves, the days of
/// trouble after them (signs, positives, orders: the nearest along gifts and shared yards first), and the days on which
/// the touched colonies were answered or gave on. Empty: no trouble is linked to what is touched, at any time, so that
/// no hold rests on it.
std::set<Day> daysToJudge(const Snapshot& latest, const Touched& touched, Day today);

} // namespace core::edit
