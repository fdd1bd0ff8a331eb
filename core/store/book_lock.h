#pragma once

#include "core/base/book_held.h"

#include <QString>

namespace core::store {

/// The mark of the one program that writes a book: a lock of the operating system on the file `BOOK-lock` beside it.
/// It dies with the process, so a killed program leaves a file behind but nothing locked, whatever stands in the file.
class BookLock {
public:
    /// Throws BookHeld when another holds it (this process too); Error(Book) where the folder cannot be written.
    explicit BookLock(const QString& bookPath);
    ~BookLock();
    BookLock(const BookLock&) = delete;
    BookLock& operator=(const BookLock&) = delete;

    /// Writes into the file who holds it, for others to say. Where that fails (a full disk) the lock holds all the
    /// same.
    void sign(const BookHolder& holder) const;

private:
    QByteArray m_path;
    int m_file = -1;
};

} // namespace core::store
