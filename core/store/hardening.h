#pragma once

struct sqlite3;

namespace core::store {

/// Makes a connection safe against a file that someone else has prepared: no trusted schema, no triggers or views, no
/// extensions, defensive mode, cell sizes checked. Call before the first read. Throws Error.
void harden(sqlite3* db);

} // namespace core::store
