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

} // namespace

void harden(sqlite3* db) {
    for (const Switch& s : kSwitches) {
        const int code = sqlite3_db_config(db, s.option, s.on, nullptr);
        if (code != SQLITE_OK) throw sqliteError(db, code, QStringLiteral("db_config %1").arg(s.option));
    }
    const int code = sqlite3_exec(db, "PRAGMA cell_size_check = ON", nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) throw sqliteError(db, code, QStringLiteral("cell_size_check"));
}

} // namespace core::store
