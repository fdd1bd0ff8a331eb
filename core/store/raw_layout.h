#pragma once

#include "core/store/table_walk.h"

#include <QString>

#include <map>
#include <span>
#include <vector>

namespace core::store {

/// Shapes of the records of all tables with rows of ours, by name: those of the edits, book, history, history_part.
const std::map<QString, RecordShape>& recordShapes();

/// Where each table and index begins, by name.
using Roots = std::map<QString, qint64>;

struct RawLayout {
    Roots roots;
    int version = 0;      ///< of the book; 0: not known
    bool guessed = false; ///< its own list of tables is not whole: some stand where such a book has them
};

/// From the file's first page; what is missing there from `like` (a book that it may be a page by page copy of), or
/// from how this program makes a book, where the pages found there agree. Throws Error(Book): another program's, or a
/// newer version's.
RawLayout readLayout(const RawPages& pages, const QString& shownPath, const Roots& like);

/// Pages that hold nothing, which may show what was there once; nullopt: the list of them is not whole.
std::optional<UsedPages> freePages(const RawPages& pages);

} // namespace core::store
