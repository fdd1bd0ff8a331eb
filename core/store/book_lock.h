#pragma once

#include <QString>

namespace core::store {

/// The mark of the one program that writes a book: a lock of the operating system on the file `BOOK-lock` beside it.
/// It dies with the process, so a killed program leaves an empty file behind but nothing locked.
class BookLock {
public:
    /// Throws Error(Book) when another holds it (this process too), or the folder cannot be written.
    explicit BookLock(const QString& bookPath);
    ~BookLock();
    BookLock(const BookLock&) = delete;
    BookLock& operator=(const BookLock&) = delete;

private:
    QByteArray m_path;
    int m_file = -1;
};

} // namespace core::store
