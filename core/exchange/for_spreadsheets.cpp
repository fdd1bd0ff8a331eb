#include "core/exchange/for_spreadsheets.h"

#include "core/base/error.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/csv_writer.h"
#include "core/exchange/export.h"
#include "core/exchange/fault.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <memory>
#include <vector>

namespace core::exchange {

namespace {

QString nameOf(const QString& file) { return file.chopped(4) + QStringLiteral(".for-spreadsheets.csv"); }

void rewrite(const QString& from, CsvWriter& out, const Progress& progress) {
    QFile file(from);
    if (!file.open(QIODevice::ReadOnly))
        throw Error(Error::Kind::Book,
                    Say::tr("The file %1 cannot be read.").arg(QDir::toNativeSeparators(file.fileName())));
    CsvReader reader(file, ',');
    reader.forget();
    Ticker ticker(progress, file.size());
    CsvRecord record;
    while (reader.next(record) == CsvReader::Found::Record) {
        if (ticker.due()) ticker.at(file.pos());
        QStringList cells;
        for (size_t i = 0; i < record.size(); ++i) {
            const std::string_view cell = record.cell(i);
            cells << cellForSpreadsheets(QString::fromUtf8(cell.data(), static_cast<qsizetype>(cell.size())));
        }
        out.row(cells);
    }
}

} // namespace

QString cellForSpreadsheets(const QString& cell) {
    if (cell.isEmpty() || !QStringLiteral("=+-@\t\r\n").contains(cell.front())) return cell;
    bool number = false;
    cell.toDouble(&number);
    return number ? cell : u'\'' + cell;
}

void exportForSpreadsheets(const edit::Session& session, const QString& dir, const Progress& progress) {
    constexpr double kPlain = 0.85; // of the way, as measured on a book of 20,000 colonies
    OutFolder folder(dir);
    const QTemporaryDir plain(QDir(dir).filePath(QStringLiteral(".export-XXXXXX")));
    if (!plain.isValid())
        throw Error(Error::Kind::Book, Say::tr("The folder %1 cannot be written.").arg(QDir::toNativeSeparators(dir)));
    exportBook(session, plain.path(), progress.part(0, kPlain).inner());
    const Progress safe = progress.part(kPlain, 1, Say::tr("Making the files safe for spreadsheets"));
    const QFileInfoList made = QDir(plain.path()).entryInfoList({QStringLiteral("*.csv")}, QDir::Files);
    double all = 1;
    for (const QFileInfo& file : made) all += static_cast<double>(file.size());
    std::vector<std::unique_ptr<CsvWriter>> files;
    double before = 0;
    for (const QFileInfo& file : made) {
        const double after = before + static_cast<double>(file.size());
        files.push_back(std::make_unique<CsvWriter>(dir, nameOf(file.fileName())));
        rewrite(file.filePath(), *files.back(), safe.part(before / all, after / all));
        before = after;
    }
    commitAll(files, progress);
    folder.keep();
}

} // namespace core::exchange
