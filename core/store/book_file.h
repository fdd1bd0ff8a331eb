#pragma once

#include "core/base/error.h"
#include "core/store/database.h"
#include "core/store/part_file.h"

#include <QString>

namespace core::store {

/// A book's file before it is opened.
struct BookFile {
    QString path; ///< absolute, links followed
    QString uri;  ///< for SQLite, with its mode
};

/// Throws Error(Book) when there is no file, it is a folder or another special thing, or cannot be read or (ReadWrite)
/// written, has a second name (ReadWrite), or the files beside it are none of ours (beside_book.h). Never opens the
/// file: closing it would drop the locks of this process's other connections to it.
BookFile lookAt(const QString& path, Access access);

/// A file under another name beside the book that it becomes when keep() is called; else it is removed again. So a
/// book is there whole or not at all.
class NewBookFile {
public:
    /// Throws Error(Book) where `path` exists or its folder cannot be written.
    explicit NewBookFile(const QString& path);
    NewBookFile(const NewBookFile&) = delete;
    NewBookFile& operator=(const NewBookFile&) = delete;

    const BookFile& part() const { return m_part; }
    /// Gives it its name (keepAs). Throws Error(Book).
    void keep();

private:
    QString m_path;
    PartFile m_name;
    BookFile m_part;
};

/// The file at `part` gets this name, on the disk, without replacing anything. Throws Error(Book).
void keepAs(const QString& part, const QString& path);

/// The file at `part` is at `path` then, on the disk, whatever was there. Throws Error(Book).
void putAt(const QString& part, const QString& path);

/// A journal that a killed program left beside the book is played back, as when the book is opened. False: it is there
/// still, and not to be read as another book's. No one has the book open.
bool settleJournal(const QString& book);

/// The book at `part` takes the place of the one at `book`, which is at `part` then; where there is none it just takes
/// the name. Whenever that is cut short there is a whole book at `book`, and the old one at one of the two. No one has
/// either open. Throws Error(Book): then nothing has changed and `part` is gone; or only at the end the disk failed.
void takePlace(const QString& part, const QString& book);

/// As messages show a path.
QString shownPath(const QString& path);

Error olderBook(const QString& path);
/// `newest`: that this program knows.
Error newerBook(const QString& path, qint64 version, int newest);
/// For a handler of `e`: throws the same error, its sentence beginning with the file where it does not name it yet.
/// What it says of `part`, the file's name in the making, it says of the file.
[[noreturn]] void throwNaming(const Error& e, const QString& path, const QString& part = {});

} // namespace core::store
