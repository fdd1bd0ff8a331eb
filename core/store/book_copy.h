#pragma once

#include "core/store/book_file.h"

#include <atomic>
#include <functional>
#include <future>
#include <memory>

struct sqlite3;
struct sqlite3_backup;

namespace core::store {

/// A copy of a book made in small slices, so that a window stays alive meanwhile and the book can be written: then it
/// begins anew. The copy is checked in a thread of its own before it gets its name; destroyed before that, nothing is
/// left. Many slices, one thread.
class BookCopy {
public:
    /// Of the book at `from`, at `to`. Throws Error(Book) where `from` cannot be read, or `to` exists or cannot be
    /// made.
    BookCopy(const QString& from, const QString& to);
    ~BookCopy();
    BookCopy(const BookCopy&) = delete;
    BookCopy& operator=(const BookCopy&) = delete;

    /// Copies for some `milliseconds` (0: as little as can be), or looks whether the check is over. True: there is more
    /// to do. False: the copy has its name. Throws Error(Book): the disk is full, the copy is not sound, ...; then
    /// nothing is left.
    bool step(int milliseconds);
    double share() const;                        ///< of the pages, 0..1
    qint64 lastSeq() const { return m_lastSeq; } ///< of the copy's history, once it has its name

private:
    void begin();
    void end();
    bool copySome(int milliseconds);
    void check();

    std::unique_ptr<Database> m_from;
    NewBookFile m_file;
    sqlite3* m_to = nullptr;
    sqlite3_backup* m_backup = nullptr;
    std::atomic<bool> m_stop = false;
    std::future<qint64> m_checking; ///< the last line of its history
    qint64 m_lastSeq = 0;
};

} // namespace core::store
