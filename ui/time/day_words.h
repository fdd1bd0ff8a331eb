#pragma once

#include "core/model/recorded_day.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

namespace ui::time {

using Records = std::vector<core::RecordedDay>; ///< by day, then kind

/// Those from the first day to the last, both included. Binary search.
std::span<const core::RecordedDay> recordsIn(const Records& records, core::Day first, core::Day last);
/// The nearest day with a record after it (or before it).
std::optional<core::Day> dayAfter(const Records& records, core::Day day);
std::optional<core::Day> dayBefore(const Records& records, core::Day day);
/// "12 visits · 1 hive carried"; of several days their sum. Empty: nothing is recorded.
QString recordWords(std::span<const core::RecordedDay> records);
/// "The yard on 3 Jul 2026: 12 visits", "The yard today"
QString yardWords(core::Day day, core::Day today, const QString& records);

} // namespace ui::time
