#include "core/exchange/foreign_cells.h"

#include "core/exchange/csv_reader.h"
#include "core/exchange/number.h"

#include <QBuffer>

#include <algorithm>

namespace core::exchange {

namespace {

bool allDigits(const QByteArray& text) {
    return !text.isEmpty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

} // namespace

std::vector<std::vector<QByteArray>> firstRows(const QByteArray& text, char separator, size_t most) {
    QBuffer buffer;
    buffer.setData(text);
    buffer.open(QIODevice::ReadOnly);
    CsvReader reader(buffer, separator);
    std::vector<std::vector<QByteArray>> rows;
    CsvRecord record;
    while (rows.size() < most) {
        const CsvReader::Found found = reader.next(record);
        if (found == CsvReader::Found::End || (found == CsvReader::Found::Trouble && reader.trouble().stops)) break;
        if (found == CsvReader::Found::Trouble || record.blank()) continue;
        std::vector<QByteArray> row;
        for (size_t i = 0; i < record.size(); ++i)
            row.emplace_back(record.cell(i).data(), static_cast<qsizetype>(record.cell(i).size()));
        rows.push_back(std::move(row));
    }
    return rows;
}

std::optional<std::array<QByteArray, 3>> numberParts(const QByteArray& cell) {
    for (const char mark : {'-', '/', '.'}) {
        const QList<QByteArray> parts = cell.split(mark);
        if (parts.size() != 3 || !std::ranges::all_of(parts, allDigits)) continue;
        const bool yearFirst = parts[0].size() == 4 && parts[1].size() <= 2 && parts[2].size() <= 2;
        const bool yearLast =
            parts[0].size() <= 2 && parts[1].size() <= 2 && (parts[2].size() == 4 || parts[2].size() == 2);
        if (yearFirst || yearLast) return std::array{parts[0], parts[1], parts[2]};
    }
    return std::nullopt;
}

QByteArray isoDayCell(const QByteArray& cell, DayOrder order) {
    QByteArray day = cell.trimmed();
    if (const auto blank = std::ranges::find_if(day, [](char c) { return c == ' ' || c == 'T'; }); blank != day.end())
        day.truncate(blank - day.begin());
    const auto parts = numberParts(day);
    if (!parts) return cell;
    const bool yearFirst = (*parts)[0].size() == 4;
    if (yearFirst != (order == DayOrder::YearMonthDay)) return cell;
    QByteArray year = yearFirst ? (*parts)[0] : (*parts)[2];
    if (year.size() == 2) year.prepend("20");
    const QByteArray& month = yearFirst || order == DayOrder::DayMonthYear ? (*parts)[1] : (*parts)[0];
    const QByteArray& date = yearFirst ? (*parts)[2] : order == DayOrder::DayMonthYear ? (*parts)[0] : (*parts)[1];
    return year + '-' + month.rightJustified(2, '0') + '-' + date.rightJustified(2, '0');
}

QByteArray numberCell(const QByteArray& cell, DecimalMark decimal) {
    QByteArray number = cell.trimmed();
    number.replace('\'', "");
    if (decimal == DecimalMark::Comma) number.replace(',', '.');
    return number;
}

QByteArray scaledCell(const QByteArray& cell, double factor) {
    const auto value = parseReal({cell.constData(), static_cast<size_t>(cell.size())}, false);
    return value ? QByteArray::number(*value * factor, 'f', 6) : cell;
}

} // namespace core::exchange
