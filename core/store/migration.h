#pragma once

#include "core/base/progress.h"

#include <QByteArray>
#include <QString>

#include <span>
#include <vector>

namespace core::store {

class Database;

/// One step of the schema: numbered from 1.
struct Migration {
    int version = 0;
    QByteArray sql; ///< statements, each ended by a semicolon at a line's end
};

/// The book's migrations, from the resources, in order. Released ones never change.
const std::vector<Migration>& bookMigrations();

/// Runs those above the file's version, all in one transaction, with foreign keys checked after each. Throws Stopped:
/// the file is as it was.
void migrate(Database& db, std::span<const Migration> migrations, const Progress& progress = {});

/// A verified copy beside the book before it is migrated ("NAME.version-1.yardwright"); returns its path.
QString backUpBeforeMigration(Database& db, int version, const Progress& progress = {});

/// Compares the file's tables and indexes with those that the migrations make; throws Error(Book) on any difference,
/// and on any trigger or view.
void checkSchema(Database& db, std::span<const Migration> migrations);

} // namespace core::store
