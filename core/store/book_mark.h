#pragma once

#include <QString>

#include <optional>

namespace core::store {

/// The id of the book in the file at `path`, read with the least that tells it and without a lock; empty where it is a
/// book and too damaged to tell, nullopt where it is none. No file that this process has open (`BookLock` and SQLite
/// keep locks that a closing would drop): leave it out by its number.
std::optional<QString> bookIdIn(const QString& path);

/// The same file on the same disk, whatever its name.
bool sameFile(const QString& a, const QString& b);

} // namespace core::store
