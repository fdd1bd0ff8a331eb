#include "core/store/hardening.h"

#include "core/store/sqlite_error.h"

#include <sqlite3.h>

namespace core::store {

namespace {

struct Switch {
    int option;
    int on;
};

constexpr Switch kSwitches[] = {
    {SQLITE_DBCONFIG_DEFENSIVE, 1},   {SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},  {SQLITE_DBCONFIG_ENABLE_TRIGGER, 0},
    {SQLITE_DBCONFIG_ENABLE_VIEW, 0}, {SQLITE_DBCONFIG_WRITABLE_SCHEMA, 0}, {SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0},
    {SQLITE_DBCONFIG_DQS_DML, 0},     {SQLITE_DBCONFIG_DQS_DDL, 0},
};

struct Limit {
    int what;
    int most;
};

/// Above what any statement or row of ours needs, below what a prepared file could waste.
constexpr Limit kLimits[] = {
    {SQLITE_LIMIT_LENGTH, 500'000'000}, // a line of the history keeps the texts of an import
    {SQLITE_LIMIT_SQL_LENGTH, 100'000}, {SQLITE_LIMIT_COLUMN, 100},
    {SQLITE_LIMIT_EXPR_DEPTH, 100},     {SQLITE_LIMIT_COMPOUND_SELECT, 30},
    {SQLITE_LIMIT_TRIGGER_DEPTH, 1},    {SQLITE_LIMIT_WORKER_THREADS, 0},
    {SQLITE_LIMIT_ATTACHED, 0},         {SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 1000},
};

} // namespace

void allowOtherFiles(sqlite3* db, bool allowed) { sqlite3_limit(db, SQLITE_LIMIT_ATTACHED, allowed ? 1 : 0); }

void harden(sqlite3* db) {
    for (const Switch& s : kSwitches) {
        const int code = sqlite3_db_config(db, s.option, s.on, nullptr);
        if (code != SQLITE_OK) throwSqlite(db, code, QStringLiteral("db_config %1").arg(s.option));
    }
    for (const Limit& l : kLimits) sqlite3_limit(db, l.what, l.most);
    const int code = sqlite3_exec(db, "PRAGMA cell_size_check = ON", nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) throwSqlite(db, code, QStringLiteral("cell_size_check"));
}

} // namespace core::store
