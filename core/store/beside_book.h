#pragma once

#include <QString>

namespace core::store {

/// Whether the files that SQLite keeps beside a book (journal, write-ahead log) can be left to it: each a plain
/// file, and no journal that names a file besides the book: SQLite would read the one named, and delete it. Throws
/// Error(Book). To be asked before the book is opened.
void needOwnFilesBeside(const QString& book);

} // namespace core::store
