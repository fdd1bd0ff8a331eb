#pragma once

#include <sqlite3.h>

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace core::store {

class StatementPool {
public:
    explicit StatementPool(sqlite3* db) : m_db(db) {}
    ~StatementPool() { clear(); }
    StatementPool(const StatementPool&) = delete;
    StatementPool& operator=(const StatementPool&) = delete;

    sqlite3* db() const { return m_db; }
    sqlite3_stmt* take(std::string_view sql);
    void giveBack(sqlite3_stmt* statement);
    void clear();

private:
    static constexpr size_t kMost = 200;

    sqlite3* m_db;
    std::unordered_multimap<std::string, sqlite3_stmt*> m_free;
};

} // namespace core::store
