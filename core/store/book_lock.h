#pragma once

#include "core/base/book_held.h"

#include <QString>

#include <optional>

namespace core::store {

/// The locks of the operating system: 0, or -1 with errno. Tests have file systems that know none.
struct LockCalls {
    int (*whole)(int file);  ///< flock
    int (*ranged)(int file); ///< of the open file description, where a file system does not know the first
};
const LockCalls& systemLocks();

/// The mark of the one program that writes a book: a lock of the operating system on the file `BOOK-lock` beside it.
/// It dies with the process, so a killed program leaves a file behind but nothing locked. A sync program carries that
/// file to other machines, without the lock: the note in it is then all that is known there.
class BookLock {
public:
    /// Throws BookHeld when another holds it (this process too), or a note tells of another machine; Error(Book) where
    /// the folder cannot be written or knows no locks.
    explicit BookLock(const QString& bookPath, const LockCalls& calls = systemLocks());
    ~BookLock();
    BookLock(const BookLock&) = delete;
    BookLock& operator=(const BookLock&) = delete;

    /// Writes into the file who holds it, for others to say. Where that fails (a full disk) the lock holds all the
    /// same.
    void sign(const BookHolder& holder);
    /// Before each write: a sync program may have taken the file away, or brought another machine's note. Takes the
    /// lock anew where it is gone. Throws BookHeld as the constructor does, and leaves the note as it is.
    void need();

private:
    int taken() const;
    void signAgain() const;

    QByteArray m_path;
    LockCalls m_calls;
    int m_file = -1;
    std::optional<BookHolder> m_holder;
};

/// Another machine's note beside the book is no longer true: it goes. Throws BookHeld where the lock itself is held.
void forgetNote(const QString& bookPath);

} // namespace core::store
