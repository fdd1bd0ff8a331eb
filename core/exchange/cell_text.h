#pragma once

#include "core/base/day.h"
#include "core/base/quantity.h"
#include "core/model/words.h"

#include <QString>

#include <optional>

// What a cell of a file holds; blank where nothing is recorded.

namespace core::exchange {

QString cellText(const std::optional<Day>& day);
QString cellText(const std::optional<int>& number);
QString cellText(const std::optional<double>& number); ///< the shortest that reads back the same
QString cellText(const std::optional<Quarters>& frames);
QString cellText(const std::optional<Decagrams>& weight);
QString cellText(const std::optional<Millimetres>& length);
QString cellText(Signs signs);
template <class E>
requires std::is_enum_v<E> QString cellText(const std::optional<E>& value) { return value ? word(*value) : QString(); }
/// As an import would keep it: names without blanks around, notes as they are.
QString nameText(const QString& text);
QString noteText(const QString& text);

} // namespace core::exchange
