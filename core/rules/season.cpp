#include "core/rules/season.h"

#include <QDate>

#include <algorithm>

namespace core::rules {

namespace {

int movedMonth(int month, bool southern) { return southern ? (month + 5) % 12 + 1 : month; }

} // namespace

Day dayInYear(int year, MonthDay md, bool southern) {
    const QDate first(year, movedMonth(md.month, southern), 1);
    return dayOf(first) + (std::min(md.day, first.daysInMonth()) - 1);
}

bool inSeason(Day d, MonthDay from, MonthDay to, bool southern) {
    const int year = toDate(d).year();
    const Day start = dayInYear(year, from, southern);
    const Day end = dayInYear(year, to, southern);
    return end < start ? d >= start || d <= end : d >= start && d <= end;
}

Day latestStart(Day d, MonthDay start, bool southern) {
    const int year = toDate(d).year();
    const Day thisYear = dayInYear(year, start, southern);
    if (thisYear <= d) return thisYear;
    constexpr int kFirstYear = 1;
    return year > kFirstYear ? dayInYear(year - 1, start, southern) : thisYear - 365;
}

int northernMonth(Day d, bool southern) { return movedMonth(toDate(d).month(), southern); }

} // namespace core::rules
