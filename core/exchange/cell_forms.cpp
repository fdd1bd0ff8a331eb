#include "core/exchange/foreign_cells.h"
#include "core/exchange/text_source.h"

#include <algorithm>
#include <map>

// What the first rows of a file tell of its separator, decimal mark and days.

namespace core::exchange {

namespace {

constexpr size_t kRowsLooked = 200;
constexpr char kSeparators[] = {',', ';', '\t', '|'};

using ForeignRows = std::vector<std::vector<QByteArray>>;

/// In how many of the rows as many cells stand as in the first, where that has more than one.
size_t agreeing(const ForeignRows& rows) {
    if (rows.empty() || rows.front().size() < 2) return 0;
    return static_cast<size_t>(
        std::ranges::count_if(rows, [&](const auto& row) { return row.size() == rows.front().size(); }));
}

/// The separator by which most rows have as many cells as the header; of several the one with the most cells.
char separatorOf(const QByteArray& text) {
    char best = ',';
    std::pair<size_t, size_t> most{0, 0};
    for (const char separator : kSeparators) {
        const ForeignRows rows = firstRows(text, separator, kRowsLooked);
        const std::pair<size_t, size_t> now{agreeing(rows), rows.empty() ? 0 : rows.front().size()};
        if (now <= most) continue;
        most = now;
        best = separator;
    }
    return best;
}

/// Marks in cells that are numbers: digits, one mark, digits.
void countMarks(const QByteArray& cell, int& points, int& commas) {
    const QByteArray number = cell.startsWith('-') ? cell.mid(1) : cell;
    const auto mark = std::ranges::find_if(number, [](char c) { return c == '.' || c == ','; });
    if (mark == number.end() || mark == number.begin() || mark + 1 == number.end()) return;
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    if (!std::all_of(number.begin(), mark, digit) || !std::all_of(mark + 1, number.end(), digit)) return;
    ++(*mark == '.' ? points : commas);
}

struct DayParts {
    bool yearFirst = false;
    int first = 0, second = 0; ///< besides the year, in their order
};

std::optional<DayParts> dayParts(const QByteArray& cell) {
    const auto parts = numberParts(cell);
    if (!parts) return std::nullopt;
    const auto [a, b, c] = *parts;
    if (a.size() == 4) return DayParts{true, b.toInt(), c.toInt()};
    return DayParts{false, a.toInt(), b.toInt()};
}

struct DayCounts {
    int yearFirst = 0, dayFirst = 0, monthFirst = 0, either = 0;

    void count(const DayParts& day) {
        if (day.yearFirst)
            ++yearFirst;
        else if (day.first > 12 && day.second <= 12)
            ++dayFirst;
        else if (day.second > 12 && day.first <= 12)
            ++monthFirst;
        else
            ++either;
    }
    void tell(FoundForms& found) const {
        const int told = dayFirst + monthFirst;
        if (told + either == 0) return; // year first, or no days at all
        found.forms.days = monthFirst > dayFirst ? DayOrder::MonthDayYear : DayOrder::DayMonthYear;
        found.daysDoubtful = told == 0 || (dayFirst > 0 && monthFirst > 0);
    }
};

} // namespace

FoundForms formsOf(const QByteArray& text) {
    FoundForms found;
    found.forms.separator = separatorOf(text);
    int points = 0, commas = 0;
    DayCounts days;
    const ForeignRows rows = firstRows(text, found.forms.separator, kRowsLooked);
    for (size_t i = 1; i < rows.size(); ++i)
        for (const QByteArray& raw : rows[i]) {
            const QByteArray cell = raw.trimmed();
            countMarks(cell, points, commas);
            if (const auto day = dayParts(cell)) days.count(*day);
        }
    days.tell(found);
    found.forms.decimal = commas > points ? DecimalMark::Comma : DecimalMark::Point;
    found.decimalDoubtful = points > 0 && commas > 0;
    return found;
}

} // namespace core::exchange
