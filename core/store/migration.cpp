#include "core/store/migration.h"

#include "core/base/damaged.h"
#include "core/store/backup.h"
#include "core/store/book_file.h"
#include "core/store/database.h"
#include "core/store/watched.h"

#include <QFile>
#include <QFileInfo>
#include <QMutex>

#include <algorithm>
#include <map>

// Outside any namespace, as the macro asks. The resources of a static library are registered by hand.
static void registerMigrations() { Q_INIT_RESOURCE(store_migrations); }

namespace core::store {

namespace {

constexpr const char* kFiles[] = {":/migrations/0001_book.sql",         ":/migrations/0002_people.sql",
                                  ":/migrations/0003_fixed_things.sql", ":/migrations/0004_merge_days.sql",
                                  ":/migrations/0005_divides.sql",      ":/migrations/0006_visits.sql",
                                  ":/migrations/0007_health.sql"};

std::vector<Migration> readMigrations() {
    registerMigrations();
    std::vector<Migration> migrations;
    for (const char* name : kFiles) {
        QFile file{QLatin1String(name)};
        if (!file.open(QIODevice::ReadOnly))
            throw Error(Error::Kind::Internal,
                        QStringLiteral("The program lacks a part of itself: %1.").arg(file.fileName()));
        migrations.push_back({static_cast<int>(migrations.size()) + 1, file.readAll()});
    }
    return migrations;
}

/// Each ends with a semicolon at a line's end.
std::vector<std::string_view> statementsOf(const QByteArray& sql) {
    std::vector<std::string_view> statements;
    std::string_view left(sql.constData(), static_cast<size_t>(sql.size()));
    while (!left.empty()) {
        const size_t end = std::min(left.find(";\n"), left.size() - 1) + 1;
        statements.push_back(left.substr(0, end));
        left.remove_prefix(end);
    }
    return statements;
}

void checkForeignKeys(Database& db, int version) {
    Statement check = db.prepare("PRAGMA foreign_key_check");
    if (check.step())
        throw Damaged(
            QStringLiteral("The book could not be brought to version %1: rows of it point nowhere.").arg(version),
            check.text(0));
}

void runStep(Database& db, const Migration& step, const Progress& progress) {
    const std::vector<std::string_view> statements = statementsOf(step.sql);
    for (size_t i = 0; i < statements.size(); ++i) {
        progress.at(static_cast<qint64>(i), static_cast<qint64>(statements.size() + 1)); // and the keys
        db.exec(statements[i]);
    }
    checkForeignKeys(db, step.version);
    db.exec(QStringLiteral("PRAGMA user_version = %1").arg(step.version).toStdString());
}

using Schema = std::map<QString, QString>;

/// Table, index, trigger or view by name, and its SQL. What SQLite makes by itself is left out by kind, not by name
/// alone: a prepared file can name a trigger sqlite_x.
Schema schemaOf(Database& db) {
    Schema schema;
    Statement rows =
        db.prepare("SELECT type, name, sql FROM sqlite_schema WHERE NOT (type = 'index' AND sql IS NULL) AND NOT "
                   "(type = 'table' AND name IN ('sqlite_sequence', 'sqlite_stat1', 'sqlite_stat4'))");
    while (rows.step()) schema[rows.text(0) + QLatin1Char(' ') + rows.text(1)] = rows.text(2);
    return schema;
}

/// What these migrations make: worked out once, for every opening of a book asks for it.
const Schema& schemaBy(std::span<const Migration> migrations) {
    static QMutex guard;
    static std::map<QByteArray, Schema> known;
    QByteArray steps;
    for (const Migration& step : migrations) steps += step.sql;
    const QMutexLocker lock(&guard);
    const auto there = known.find(steps);
    if (there != known.end()) return there->second;
    return known.emplace(steps, schemaOf(*Database::inMemory(migrations))).first->second;
}

} // namespace

const std::vector<Migration>& bookMigrations() {
    static const std::vector<Migration> migrations = readMigrations();
    return migrations;
}

void migrate(Database& db, std::span<const Migration> migrations, const Progress& progress) {
    while (!migrations.empty() && migrations.front().version <= db.number("PRAGMA user_version"))
        migrations = migrations.subspan(1);
    if (migrations.empty()) return;
    // Off while tables are remade; a pragma inside a transaction would do nothing.
    db.exec("PRAGMA foreign_keys = OFF");
    {
        Transaction transaction(db);
        {
            const Watched watched(db.handle(), progress);
            const auto all = static_cast<double>(migrations.size());
            for (size_t i = 0; i < migrations.size(); ++i)
                runStep(db, migrations[i],
                        progress.part(static_cast<double>(i) / all, static_cast<double>(i + 1) / all));
        }
        progress.pastStopping(QStringLiteral("Writing…"));
        transaction.commit();
    }
    db.exec("PRAGMA foreign_keys = ON");
}

void checkSchema(Database& db, std::span<const Migration> migrations) {
    const Schema& expected = schemaBy(migrations);
    const Schema found = schemaOf(db);
    if (found == expected) return;
    QString difference;
    for (const auto& [name, sql] : found)
        if (const auto at = expected.find(name); at == expected.end() || at->second != sql) difference = name;
    for (const auto& [name, sql] : expected)
        if (!found.contains(name)) difference = name;
    throw Damaged(
        QStringLiteral("%1 is damaged or was changed by another program: its %2 is not as this program makes it. "
                       "Use a backup of it.")
            .arg(shownPath(db.path()), difference));
}

QString backUpBeforeMigration(Database& db, int version, const Progress& progress) {
    const QFileInfo info(db.path());
    const QString stem = info.absolutePath() + QLatin1Char('/') + info.completeBaseName();
    QString path;
    for (int n = 1; path.isEmpty() || QFileInfo::exists(path); ++n)
        path = QStringLiteral("%1.version-%2%3.yardwright")
                   .arg(stem)
                   .arg(version)
                   .arg(n == 1 ? QString() : QStringLiteral("-%1").arg(n));
    copyBook(db, path, progress);
    return path;
}

} // namespace core::store
