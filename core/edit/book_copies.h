#pragma once

#include "core/edit/compare_books.h"

#include <QDateTime>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

// Copies of a book that lie beside it, whatever they are called: a sync program makes one where a book was changed in
// two places.

namespace core::edit {

class Session;

/// A file in the book's folder with the book's id, or one too damaged to tell.
struct BookCopyFound {
    QString path;
    qint64 bytes = 0;
    BooksStand stand = BooksStand::Alike; ///< by the last lines; not set where there is a problem
    std::optional<HistoryLine> last;      ///< of its history
    QString problem;                      ///< why it cannot be read, one sentence; mostly empty

    /// Whether it has edits that the book has not, or may have.
    bool hasMore() const;
    /// Another once the copy is written to.
    QString mark() const;
};

/// By name. Looks at the first bytes of each file of the folder, and opens only those that are books. Empty once
/// `stopped` says so. Any thread.
std::vector<BookCopyFound> copiesBeside(const QString& book, const std::function<bool()>& stopped = {});

/// Moves a copy, with what lies beside it, into the folder "put aside" beside the book, under its name or the next free
/// one; returns where it is. Nothing is deleted. Throws Error(Book) where it is open in another window, or cannot be
/// moved; then it is where it was.
QString putAside(const QString& copy);

/// Whether a note beside the book says that another machine has it (core/base/book_held.h).
bool notedElsewhere(const QString& book);

/// Of a session whose file was replaced or deleted: what it has open is kept in a file beside the book, where the file
/// at its path has not all of its edits. Its path; nullopt: nothing is lost without it. Throws Error(Book) as backUp.
std::optional<QString> keepWhatIsOpen(const Session& session);

} // namespace core::edit
