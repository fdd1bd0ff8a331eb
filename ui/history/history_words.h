#pragma once

#include "core/edit/history.h"

#include <QString>

namespace ui::history {

/// In local time: "today 14:05", "yesterday 09:12", "14 Sep 2026 09:12".
QString whenText(const QDateTime& at, const QDateTime& now);
/// "taken back", "correction: wrong hive noted"; mostly empty.
QString noteText(const core::edit::HistoryLine& line);
/// The whole line in one sentence.
QString spokenText(const core::edit::HistoryLine& line, const QDateTime& now);

} // namespace ui::history
