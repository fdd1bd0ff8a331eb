#include "tests/support/csv_cells.h"

#include "core/base/quantity.h"

namespace tests::support {

const std::vector<CsvRow>& rowsOf(const CsvTables& tables, QStringView kind) {
    static const std::vector<CsvRow> none;
    const auto found = tables.find(kind.toString());
    return found == tables.end() ? none : found->second;
}

QString cell(const CsvRow& row, QStringView column) {
    const auto found = row.find(column.toString());
    return found == row.end() ? QString() : found->second.trimmed();
}

std::optional<core::Day> dayIfAny(const CsvRow& row, QStringView column) {
    const QString text = cell(row, column);
    if (text.isEmpty()) return std::nullopt;
    const auto parsed = core::parseIsoDay(text);
    if (!parsed) throw std::runtime_error("not a day: " + text.toStdString());
    return parsed;
}

core::Day day(const CsvRow& row, QStringView column) {
    const auto parsed = dayIfAny(row, column);
    if (!parsed) throw std::runtime_error("no day in " + column.toString().toStdString());
    return *parsed;
}

std::optional<qint64> scaled(const CsvRow& row, QStringView column, int decimals) {
    const QString text = cell(row, column);
    if (text.isEmpty()) return std::nullopt;
    const auto parsed = core::parseDecimal(text, decimals);
    if (!parsed) throw std::runtime_error("not such a number: " + text.toStdString());
    return parsed;
}

std::optional<int> whole(const CsvRow& row, QStringView column) {
    const auto value = scaled(row, column, 0);
    return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

std::optional<double> decimal(const CsvRow& row, QStringView column) {
    const QString text = cell(row, column);
    return text.isEmpty() ? std::nullopt : std::optional(text.toDouble());
}

int millimetres(const CsvRow& row, QStringView column) { return static_cast<int>(scaled(row, column, 3).value_or(0)); }

} // namespace tests::support
