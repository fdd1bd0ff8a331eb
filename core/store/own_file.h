#pragma once

#include "core/base/book_replaced.h"

#include <QByteArray>
#include <QString>

#include <optional>

struct sqlite3;

namespace core::store {

/// Whether the file at a book's path is still the one that is open and holds what was last read or written here: a sync
/// program replaces files, or writes into them, and heeds no lock. One connection, one thread.
class OwnFile {
public:
    OwnFile(const QString& path, sqlite3* handle);
    ~OwnFile();
    OwnFile(const OwnFile&) = delete;
    OwnFile& operator=(const OwnFile&) = delete;

    /// Before a commit: the line that the history will end with.
    void noteNextLine();
    /// After it: what lies there now is ours.
    void noteWritten();
    /// Throws BookReplaced. Quick where nobody touched the file; else the end of its history is read from the disk.
    void need();
    /// Only whether it is the same file, whatever it holds.
    void needPlace() const;

private:
    /// What the file system says of a file that nobody has touched.
    struct Mark {
        quint64 device = 0;
        quint64 number = 0;
        qint64 bytes = 0;
        qint64 changedAt = 0; ///< nanoseconds; of content or attributes
        friend bool operator==(const Mark&, const Mark&) = default;
    };
    static std::optional<Mark> markOf(const QByteArray& path);
    bool moved() const;
    QString nowAt() const;
    BookReplaced replaced(BookReplaced::How how) const;

    QByteArray m_path;
    sqlite3* m_handle;
    int m_self; ///< names the open file wherever it lies; neither reads nor locks
    std::optional<Mark> m_mark;
    QString m_line;
    QString m_nextLine;
};

} // namespace core::store
