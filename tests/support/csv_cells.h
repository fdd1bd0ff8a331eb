#pragma once

#include "core/base/day.h"
#include "core/model/words.h"
#include "tests/support/csv_tables.h"

#include <QStringView>

#include <optional>
#include <stdexcept>

namespace tests::support {

const std::vector<CsvRow>& rowsOf(const CsvTables& tables, QStringView kind);
/// The cell's text; empty where it is not recorded.
QString cell(const CsvRow& row, QStringView column);
/// Throws std::runtime_error where the cell holds no day.
core::Day day(const CsvRow& row, QStringView column);
std::optional<core::Day> dayIfAny(const CsvRow& row, QStringView column);
std::optional<int> whole(const CsvRow& row, QStringView column);
std::optional<double> decimal(const CsvRow& row, QStringView column);
/// The cell times 10^decimals, exact; nullopt where it is not recorded.
std::optional<qint64> scaled(const CsvRow& row, QStringView column, int decimals);
/// Metres as millimetres; not recorded: 0.
int millimetres(const CsvRow& row, QStringView column);

template <class E> E enumOf(const CsvRow& row, QStringView column) {
    const auto value = core::fromWord<E>(cell(row, column));
    if (!value) throw std::runtime_error("not a word of " + column.toString().toStdString());
    return *value;
}

} // namespace tests::support
