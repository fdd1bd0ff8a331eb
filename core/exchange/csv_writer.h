#pragma once

#include "core/base/progress.h"

#include <QSaveFile>
#include <QString>
#include <QStringList>

#include <memory>
#include <vector>

namespace core::exchange {

/// One CSV file being written: UTF-8, commas, LF, quotes where needed; in place only after commit(), whole or not at
/// all. All throw Error(Book) where the file cannot be written, or a book stands in its place.
class CsvWriter {
public:
    /// Each row ticks, where somebody waits.
    CsvWriter(const QString& folder, const QString& fileName, Ticker* ticker = nullptr);

    void row(const QStringList& cells);
    /// All of it is written, and not in its place yet.
    void finish();
    void commit();

private:
    void write(const QByteArray& bytes);
    [[noreturn]] void fail() const;

    QSaveFile m_file;
    QByteArray m_waiting;
    Ticker* m_ticker;
};

/// All are written before the first takes its place: a disk that is full on the way leaves none of them. Throws Stopped
/// until then.
void commitAll(const std::vector<std::unique_ptr<CsvWriter>>& files, const Progress& progress = {});

/// A folder to write into: made where it is missing, and removed again, with those above it that were made, unless it
/// is kept.
class OutFolder {
public:
    /// Throws Error(Book).
    explicit OutFolder(const QString& folder);
    ~OutFolder();
    OutFolder(const OutFolder&) = delete;
    OutFolder& operator=(const OutFolder&) = delete;

    void keep() { m_made.clear(); }

private:
    void remove() const;

    QStringList m_made; ///< the innermost first
};

} // namespace core::exchange
