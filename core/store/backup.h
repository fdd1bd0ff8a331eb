#pragma once

#include "core/base/progress.h"

#include <QString>

namespace core::store {

class Database;

/// A copy of the whole book at `path`, opened and checked before it gets its name. Throws Error(Book) where `path`
/// exists, cannot be written, or the disk is full, Stopped where `progress` says so; then nothing is left there.
void copyBook(const Database& db, const QString& path, const Progress& progress = {});

} // namespace core::store
