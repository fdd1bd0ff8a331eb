#pragma once

#include <QString>

namespace core {

/// Before anything is written to a file that takes the place of what bore its name: a PDF, a picture, a table. Throws
/// Error(Book) where a book stands there, by its name, its first bytes or the lock file beside it, or what is no plain
/// file (a folder, a device, a pipe). A link is followed. Nothing there, or another plain file: it returns.
/// Drops no lock that this process has on a book.
void needOutputTarget(const QString& path);

} // namespace core
