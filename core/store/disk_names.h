#pragma once

#include <QString>

namespace core::store {

// Names that files are given, as the system does it: 0, or an errno; then nothing has changed.

/// Not where `to` is taken.
int giveName(const QString& from, const QString& to);
/// Whatever was at `to` is gone.
int replaceName(const QString& from, const QString& to);
/// Each is at the other's name, in one go. EINVAL or ENOSYS where the disk or the system cannot.
int exchangeNames(const QString& one, const QString& other);

/// What was written to the file is on the disk when this returns.
int syncFile(const QString& path);
/// The names within the folder are. 0 where a disk cannot be asked for it.
int syncFolderOf(const QString& path);

} // namespace core::store
