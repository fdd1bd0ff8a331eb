#pragma once

struct sqlite3;

namespace core::store {

/// Makes a connection safe against a file that someone else has prepared: no trusted schema, no triggers or views, no
/// extensions, no other files, defensive mode, cell sizes checked, limits of length and depth. Call before the first
/// read. Throws Error.
void harden(sqlite3* db);

/// A copy of the book is another file: allowed while it is made.
void allowOtherFiles(sqlite3* db, bool allowed);

} // namespace core::store
