#pragma once

#include <QString>

#include <map>
#include <vector>

class QJsonObject;

namespace tests::support {

/// One row of a CSV file by column name; an empty or missing cell is "not recorded".
using CsvRow = std::map<QString, QString>;
/// Rows by kind of file: "yards", "colonies", "visits", "transfers", "results", "treatments", "lineage", "placements",
/// "box_kinds", "settings".
using CsvTables = std::map<QString, std::vector<CsvRow>>;

/// KIND.csv of a folder, those that are there. Commas, RFC 4180 quoting; checks nothing.
CsvTables tablesOfFolder(const QString& folder);
/// {"visits": [{"colony": "A", ...}, ...], ...}
CsvTables tablesOfJson(const QJsonObject& tables);
/// The text of a CSV file as rows, its first line as column names.
std::vector<CsvRow> rowsOfCsv(const QString& text);

} // namespace tests::support
