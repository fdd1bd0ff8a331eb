#include "core/exchange/csv_writer.h"

#include "core/base/error.h"
#include "core/base/file_trouble.h"
#include "core/base/output_target.h"
#include "core/base/whole_file.h"
#include "core/exchange/fault.h"

#include <QDir>
#include <QFileInfo>

#include <cerrno>
#include <cstring>

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

/// Why no folder can be made in what stands there.
QString whyNoneIn(const QString& standing, int error) {
    const QString shown = QDir::toNativeSeparators(standing);
    const QFileInfo there(standing);
    if (!there.isDir()) return Say::tr("%1 is no folder").arg(shown);
    if (!there.isWritable()) return Say::tr("%1 cannot be written").arg(shown);
    return QString::fromLocal8Bit(strerror(error));
}

} // namespace

CsvWriter::CsvWriter(const QString& folder, const QString& fileName, Ticker* ticker)
    : m_file(QDir(folder).filePath(fileName)), m_ticker(ticker) {
    needOutputTarget(m_file.fileName());
    if (!m_file.open(QIODevice::WriteOnly)) fail();
}

void CsvWriter::fail() const { throw Error(Error::Kind::Book, cannotWriteText(m_file), m_file.errorString()); }

void CsvWriter::write(const QByteArray& bytes) {
    if (!writeAll(m_file, bytes)) fail();
}

void CsvWriter::row(const QStringList& cells) {
    if (m_ticker) m_ticker->tick();
    for (qsizetype i = 0; i < cells.size(); ++i) {
        if (i > 0) m_waiting += ',';
        appendCell(m_waiting, cells[i]);
    }
    m_waiting += '\n';
    if (m_waiting.size() < kWriteChunk) return;
    write(m_waiting);
    m_waiting.clear();
}

void CsvWriter::finish() {
    write(m_waiting);
    m_waiting.clear();
    if (!m_file.flush()) fail();
}

void CsvWriter::commit() {
    finish();
    if (!commitWhole(m_file)) fail();
}

void commitAll(const std::vector<std::unique_ptr<CsvWriter>>& files, const Progress& progress) {
    for (const auto& file : files) file->finish();
    progress.pastStopping(Say::tr("Writing…"));
    for (const auto& file : files) file->commit();
}

OutFolder::OutFolder(const QString& folder) {
    QString missing = QDir::cleanPath(QDir(folder).absolutePath());
    QStringList made;
    while (!QFileInfo::exists(missing) && QFileInfo(missing).path() != missing) {
        made << missing;
        missing = QFileInfo(missing).path();
    }
    m_made = made;
    if (QDir().mkpath(folder)) return;
    const int error = errno;
    remove();
    throw Error(Error::Kind::Book,
                Say::tr("The folder %1 cannot be made: %2. Expected a folder, or a place where one can be made.")
                    .arg(QDir::toNativeSeparators(folder), whyNoneIn(missing, error)));
}

OutFolder::~OutFolder() { remove(); }

/// What was never made is passed over; what holds something is left.
void OutFolder::remove() const {
    for (const QString& folder : m_made)
        if (QFileInfo::exists(folder) && !QDir().rmdir(folder)) return;
}

} // namespace core::exchange
