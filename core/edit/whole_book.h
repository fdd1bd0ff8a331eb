#pragma once

#include "core/base/progress.h"

#include <QString>
#include <QStringList>

// What takes long with a large book. By a connection of its own, so that it can run beside an open session, in another
// thread. All throw Error(Book) where the book cannot be read, and Stopped.

namespace core::store {
class Database;
}

namespace core::edit {

/// What is wrong with the book, as Session::check() says it.
QStringList bookProblems(const store::Database& db, const Progress& progress = {});
QStringList checkBookAt(const QString& path, const Progress& progress);

/// Whether an older version of the program wrote the book, so that opening it for writing brings it up to date first.
bool isOlderBook(const QString& path);
/// That alone: a verified copy is kept beside it, then its tables are remade. Throws as Session::open(); stopped, the
/// book is as it was, byte for byte, and no copy is left.
void bringUpToDate(const QString& path, const Progress& progress);

/// As Session::backUp(); stopped, nothing is left there.
void backUpBookAt(const QString& path, const QString& to, const Progress& progress);

} // namespace core::edit
