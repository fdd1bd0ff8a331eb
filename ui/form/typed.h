#pragma once

#include "core/base/day.h"
#include "ui/form/form.h"

#include <optional>

// What typed text means. Each returns nullopt for text that is empty or means nothing.

namespace ui::form {

/// The trimmed text of a field; empty where it has none.
QString typed(const Values& values, const QString& key);
bool ticked(const Values& values, const QString& key);

std::optional<int> wholeOf(const Values& values, const QString& key);
/// A decimal point or comma; at most `decimals` digits after it; as a count of 10^-decimals.
std::optional<qint64> scaledOf(const Values& values, const QString& key, int decimals);
std::optional<double> decimalOf(const Values& values, const QString& key);
std::optional<core::Day> dayOf(const Values& values, const QString& key, core::Day today);

/// A day as people type it: 2026-09-15, 15 Sep 2026, 15.9.2026, "today", "yesterday"; 15 Sep and 15.9. are the last
/// such day up to today.
std::optional<core::Day> parseDay(QStringView typed, core::Day today);
/// As a day field begins: "15 Sep 2026".
QString typedDay(core::Day day);
QString typedDay(std::optional<core::Day> day);
QString typedWhole(std::optional<int> value);
QString typedDecimal(std::optional<double> value);

} // namespace ui::form
