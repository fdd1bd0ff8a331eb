#pragma once

#include <QString>

#include <optional>

namespace ui::board {

/// How far a merge day goes: so many unions, or the minutes that its crew has. Neither: no limit.
struct Limit {
    std::optional<int> most;
    std::optional<int> minutes;
    friend bool operator==(const Limit&, const Limit&) = default;
};

/// "6" (unions), "3 h", "2.5 h", "1 h 30", "90 min"; nothing typed: no limit. nullopt: none of these.
std::optional<Limit> limitTyped(const QString& text);
/// As it would be typed: "6", "90 min", "3 h".
QString limitAsTyped(const Limit& limit);
/// "at most 6 unions", "3 h for the crew"; empty: no limit.
QString limitText(const Limit& limit);
/// "1 h 12 min", "45 min".
QString hoursText(int minutes);

} // namespace ui::board
