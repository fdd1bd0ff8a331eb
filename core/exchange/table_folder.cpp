#include "core/exchange/table_folder.h"

#include "core/exchange/csv_writer.h"
#include "core/exchange/for_spreadsheets.h"

#include <memory>

namespace core::exchange {

void writeTables(const QString& dir, const std::vector<TableFile>& tables) {
    makeFolder(dir);
    std::vector<std::unique_ptr<CsvWriter>> files;
    for (const TableFile& table : tables) {
        files.push_back(std::make_unique<CsvWriter>(dir, table.name + QStringLiteral(".csv")));
        files.back()->row(table.head);
        for (const QStringList& row : table.rows) {
            QStringList cells;
            for (const QString& cell : row) cells << cellForSpreadsheets(cell);
            files.back()->row(cells);
        }
    }
    for (const auto& file : files) file->commit();
}

} // namespace core::exchange
