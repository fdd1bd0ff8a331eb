#include "core/base/day.h"

namespace core {

namespace {

template <class Char> int digitsAt(const Char* text, int from, int count) {
    int value = 0;
    for (int i = from; i < from + count; ++i) {
        const auto c = static_cast<unsigned>(text[i]);
        if (c < '0' || c > '9') return -1;
        value = value * 10 + static_cast<int>(c - '0');
    }
    return value;
}

/// Days from civil to Julian day number, proleptic Gregorian. Source: own calculation, checked against QDate in tests.
qint32 julianDay(int year, int month, int day) {
    const int a = (14 - month) / 12;
    const int y = year + 4800 - a;
    const int m = month + 12 * a - 3;
    return day + (153 * m + 2) / 5 + 365 * y + y / 4 - y / 100 + y / 400 - 32045;
}

template <class Char> std::optional<Day> parse(const Char* text, qsizetype size) {
    if (size != 10 || static_cast<unsigned>(text[4]) != '-' || static_cast<unsigned>(text[7]) != '-')
        return std::nullopt;
    const int year = digitsAt(text, 0, 4);
    const int month = digitsAt(text, 5, 2);
    const int day = digitsAt(text, 8, 2);
    if (year < 1 || month < 1 || month > 12 || day < 1) return std::nullopt;
    constexpr int kDays[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    if (day > kDays[month - 1] + (month == 2 && leap ? 1 : 0)) return std::nullopt;
    return Day{julianDay(year, month, day)};
}

} // namespace

Day dayOf(int year, int month, int day) { return {julianDay(year, month, day)}; }

Day dayOf(QDate date) { return {static_cast<qint32>(date.toJulianDay())}; }

QDate toDate(Day day) { return QDate::fromJulianDay(day.number); }

// By hand: thousands of reasons name several days each, and QDate::toString goes through printf.
QString isoText(Day day) {
    const QDate date = toDate(day);
    if (date.year() < 1 || date.year() > 9999) return date.toString(Qt::ISODate);
    QString text(10, u'-');
    const auto put = [&text](int at, int digits, int value) {
        for (int i = at + digits - 1; i >= at; --i, value /= 10) text[i] = QChar(u'0' + value % 10);
    };
    put(0, 4, date.year());
    put(5, 2, date.month());
    put(8, 2, date.day());
    return text;
}

std::optional<Day> parseIsoDay(QStringView text) { return parse(text.utf16(), text.size()); }

std::optional<Day> parseIsoDay(const char* text, qsizetype size) {
    return parse(reinterpret_cast<const unsigned char*>(text), size);
}

} // namespace core
