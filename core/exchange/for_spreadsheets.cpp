#include "core/exchange/for_spreadsheets.h"

#include "core/base/error.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/csv_writer.h"
#include "core/exchange/export.h"
#include "core/exchange/fault.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

namespace core::exchange {

namespace {

QString nameOf(const QString& file) { return file.chopped(4) + QStringLiteral(".for-spreadsheets.csv"); }

void rewrite(const QString& from, const QString& dir, const QString& name) {
    QFile file(from);
    if (!file.open(QIODevice::ReadOnly))
        throw Error(Error::Kind::Book,
                    Say::tr("The file %1 cannot be read.").arg(QDir::toNativeSeparators(file.fileName())));
    CsvReader reader(file, ',');
    reader.forget();
    CsvWriter out(dir, name);
    CsvRecord record;
    while (reader.next(record) == CsvReader::Found::Record) {
        QStringList cells;
        for (size_t i = 0; i < record.size(); ++i) {
            const std::string_view cell = record.cell(i);
            cells << cellForSpreadsheets(QString::fromUtf8(cell.data(), static_cast<qsizetype>(cell.size())));
        }
        out.row(cells);
    }
    out.commit();
}

} // namespace

QString cellForSpreadsheets(const QString& cell) {
    if (cell.isEmpty() || !QStringLiteral("=+-@\t\r\n").contains(cell.front())) return cell;
    bool number = false;
    cell.toDouble(&number);
    return number ? cell : u'\'' + cell;
}

void exportForSpreadsheets(const edit::Session& session, const QString& dir) {
    makeFolder(dir);
    const QTemporaryDir plain(QDir(dir).filePath(QStringLiteral(".export-XXXXXX")));
    if (!plain.isValid())
        throw Error(Error::Kind::Book, Say::tr("The folder %1 cannot be written.").arg(QDir::toNativeSeparators(dir)));
    exportBook(session, plain.path());
    for (const QString& name : QDir(plain.path()).entryList({QStringLiteral("*.csv")}, QDir::Files))
        rewrite(plain.filePath(name), dir, nameOf(name));
}

} // namespace core::exchange
