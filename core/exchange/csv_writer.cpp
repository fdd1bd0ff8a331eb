#include "core/exchange/csv_writer.h"

#include "core/base/error.h"
#include "core/base/file_trouble.h"
#include "core/base/whole_file.h"
#include "core/exchange/fault.h"

#include <QDir>

namespace core::exchange {

namespace {

constexpr qsizetype kWriteChunk = 1 << 16;

void appendCell(QByteArray& line, const QString& cell) {
    const bool quoted = cell.contains(u',') || cell.contains(u'"') || cell.contains(u'\n') || cell.contains(u'\r');
    if (!quoted) {
        line += cell.toUtf8();
        return;
    }
    line += '"';
    line += QString(cell).replace(u'"', QStringLiteral("\"\"")).toUtf8();
    line += '"';
}

} // namespace

CsvWriter::CsvWriter(const QString& folder, const QString& fileName) : m_file(QDir(folder).filePath(fileName)) {
    if (!m_file.open(QIODevice::WriteOnly)) fail();
}

void CsvWriter::fail() const { throw Error(Error::Kind::Book, cannotWriteText(m_file), m_file.errorString()); }

void CsvWriter::write(const QByteArray& bytes) {
    if (!writeAll(m_file, bytes)) fail();
}

void CsvWriter::row(const QStringList& cells) {
    for (qsizetype i = 0; i < cells.size(); ++i) {
        if (i > 0) m_waiting += ',';
        appendCell(m_waiting, cells[i]);
    }
    m_waiting += '\n';
    if (m_waiting.size() < kWriteChunk) return;
    write(m_waiting);
    m_waiting.clear();
}

void CsvWriter::commit() {
    write(m_waiting);
    m_waiting.clear();
    if (!commitWhole(m_file)) fail();
}

void makeFolder(const QString& folder) {
    if (QDir().mkpath(folder)) return;
    throw Error(Error::Kind::Book,
                Say::tr("The folder %1 cannot be made or is no folder.").arg(QDir::toNativeSeparators(folder)));
}

} // namespace core::exchange
