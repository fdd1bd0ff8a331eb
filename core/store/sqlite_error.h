#pragma once

#include "core/base/error.h"

struct sqlite3;

namespace core::store {

/// Throws the Error for a failed SQLite call: full or failing disk, read-only, held by another, damaged, or a row that
/// the schema refuses (BadData); Damaged, NoBook. `what` (the SQL, the path) goes to its detail.
[[noreturn]] void throwSqlite(sqlite3* db, int code, const QString& what);

/// Of a book whose file is no longer where it was opened.
QString movedSentence();

} // namespace core::store
