#include "core/exchange/table_folder.h"

#include "core/base/error.h"
#include "core/base/output_target.h"
#include "core/exchange/csv_writer.h"
#include "core/exchange/fault.h"
#include "core/exchange/for_spreadsheets.h"

#include <QDir>
#include <QFile>

#include <memory>

namespace core::exchange {

namespace {

/// A book that was exported there has files of the same names: they are not these.
void needOwnOrNone(const QString& dir, const TableFile& table) {
    const QString path = QDir(dir).filePath(table.name + QStringLiteral(".csv"));
    needOutputTarget(path); // before it is opened: a pipe would wait, and a book would lose its locks
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return;
    if (QString::fromUtf8(file.readLine()).trimmed() == table.head.join(u',')) return;
    throw Error(Error::Kind::Book, Say::tr("The file %1 has other columns than this one would have: it is left as it "
                                           "is, and nothing was written. Expected another folder, or an empty one.")
                                       .arg(QDir::toNativeSeparators(path)));
}

} // namespace

void writeTables(const QString& dir, const std::vector<TableFile>& tables, const Progress& progress) {
    OutFolder folder(dir);
    qint64 rows = 0;
    for (const TableFile& table : tables) rows += static_cast<qint64>(table.rows.size());
    for (const TableFile& table : tables) needOwnOrNone(dir, table);
    Ticker ticker(progress, rows);
    std::vector<std::unique_ptr<CsvWriter>> files;
    for (const TableFile& table : tables) {
        files.push_back(std::make_unique<CsvWriter>(dir, table.name + QStringLiteral(".csv"), &ticker));
        files.back()->row(table.head);
        for (const QStringList& row : table.rows) {
            QStringList cells;
            for (const QString& cell : row) cells << cellForSpreadsheets(cell);
            files.back()->row(cells);
        }
    }
    commitAll(files, progress);
    folder.keep();
}

} // namespace core::exchange
