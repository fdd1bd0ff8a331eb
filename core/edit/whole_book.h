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

/// As Session::backUp(); stopped, nothing is left there.
void backUpBookAt(const QString& path, const QString& to, const Progress& progress);

} // namespace core::edit
