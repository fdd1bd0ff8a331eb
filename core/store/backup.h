#pragma once

#include <QString>

namespace core::store {

class Database;

/// A copy of the whole book at `path`, opened and checked before it gets its name. Throws Error(Book) where `path`
/// exists, cannot be written, or the disk is full; then nothing is left there.
void copyBook(const Database& db, const QString& path);

} // namespace core::store
