#pragma once

#include <QSaveFile>
#include <QString>
#include <QStringList>

namespace core::exchange {

/// One CSV file being written: UTF-8, commas, LF, quotes where needed; in place only after commit(), whole or not at
/// all. All throw Error(Book) where the file cannot be written.
class CsvWriter {
public:
    CsvWriter(const QString& folder, const QString& fileName);

    void row(const QStringList& cells);
    void commit();

private:
    void write(const QByteArray& bytes);
    [[noreturn]] void fail() const;

    QSaveFile m_file;
    QByteArray m_waiting;
};

/// Makes the folder where it is missing. Throws Error(Book).
void makeFolder(const QString& folder);

} // namespace core::exchange
