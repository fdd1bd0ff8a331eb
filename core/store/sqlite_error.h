#pragma once

#include "core/base/error.h"

struct sqlite3;

namespace core::store {

/// The Error for a failed SQLite call: full or failing disk, read-only, held by another, damaged, or a row that the
/// schema refuses (BadData). `what` (the SQL, the path) goes to its detail.
Error sqliteError(sqlite3* db, int code, const QString& what);

/// Of a book whose file is no longer where it was opened.
QString movedSentence();

} // namespace core::store
