#pragma once

#include <QDate>
#include <QString>
#include <QStringView>

#include <compare>
#include <optional>

namespace core {

/// A calendar day as a count of days (Julian day number), so that differences and limits are plain integers.
/// Text and files use ISO 8601 (2026-09-20). Years 1 to 9999.
struct Day {
    qint32 number = 0;
    friend auto operator<=>(Day, Day) = default;
    friend Day operator+(Day d, int days) { return {d.number + days}; }
    friend Day operator-(Day d, int days) { return {d.number - days}; }
    friend int operator-(Day a, Day b) { return a.number - b.number; }
};

/// Day of a year, month 1..12 and day 1..31; the day must exist.
Day dayOf(int year, int month, int day);
Day dayOf(QDate date);
QDate toDate(Day day);

/// "2026-09-20"
QString isoText(Day day);
/// Strictly `YYYY-MM-DD` of an existing day from the years 1 to 9999; nothing else, no blanks.
std::optional<Day> parseIsoDay(QStringView text);
/// The same for 10 ASCII bytes: what the store reads in bulk. nullopt when it is no day.
std::optional<Day> parseIsoDay(const char* text, qsizetype size);

} // namespace core
