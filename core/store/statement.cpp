#include "core/store/statement.h"

#include "core/base/damaged.h"
#include "core/store/sqlite_error.h"
#include "core/store/statement_pool.h"
#include "core/store/watched.h"

#include <utility>

namespace core::store {

sqlite3_stmt* StatementPool::take(std::string_view sql) {
    const std::string key(sql);
    if (const auto found = m_free.find(key); found != m_free.end()) {
        sqlite3_stmt* statement = found->second;
        m_free.erase(found);
        return statement;
    }
    sqlite3_stmt* statement = nullptr;
    const int code = sqlite3_prepare_v3(m_db, key.c_str(), static_cast<int>(key.size()) + 1, SQLITE_PREPARE_PERSISTENT,
                                        &statement, nullptr);
    if (code != SQLITE_OK) throwSqlite(m_db, code, QString::fromUtf8(key.data(), qsizetype(key.size())));
    return statement;
}

void StatementPool::giveBack(sqlite3_stmt* statement) {
    sqlite3_reset(statement);
    sqlite3_clear_bindings(statement);
    const char* sql = sqlite3_sql(statement);
    if (m_free.size() >= kMost || !sql) {
        sqlite3_finalize(statement);
        return;
    }
    m_free.emplace(sql, statement);
}

void StatementPool::clear() {
    for (const auto& [sql, statement] : m_free) sqlite3_finalize(statement);
    m_free.clear();
}

Statement::Statement(std::shared_ptr<StatementPool> pool, std::string_view sql)
    : m_pool(std::move(pool)), m_statement(m_pool->take(sql)) {}

Statement::Statement(Statement&& other) noexcept
    : m_pool(std::move(other.m_pool)), m_statement(std::exchange(other.m_statement, nullptr)) {}

Statement::~Statement() {
    if (m_statement) m_pool->giveBack(m_statement);
}

void Statement::fail(int code) const {
    throwStopped(code);
    throwSqlite(m_pool->db(), code, QString::fromUtf8(sqlite3_sql(m_statement)));
}

void Statement::check(int code) const {
    if (code != SQLITE_OK) fail(code);
}

Statement& Statement::bind(int parameter, qint64 value) {
    check(sqlite3_bind_int64(m_statement, parameter, value));
    return *this;
}

Statement& Statement::bind(int parameter, double value) {
    check(sqlite3_bind_double(m_statement, parameter, value));
    return *this;
}

Statement& Statement::bind(int parameter, Day day) { return bind(parameter, isoText(day)); }

Statement& Statement::bind(int parameter, const QString& text) {
    if (text.isEmpty()) return bindNull(parameter);
    check(
        sqlite3_bind_text16(m_statement, parameter, text.utf16(), static_cast<int>(text.size() * 2), SQLITE_TRANSIENT));
    return *this;
}

Statement& Statement::bind(int parameter, const QByteArray& bytes) {
    if (bytes.isNull()) return bindNull(parameter);
    check(sqlite3_bind_blob64(m_statement, parameter, bytes.constData(), static_cast<sqlite3_uint64>(bytes.size()),
                              SQLITE_TRANSIENT));
    return *this;
}

Statement& Statement::bind(int parameter, const Value& value) {
    if (const auto* number = std::get_if<qint64>(&value)) return bind(parameter, *number);
    if (const auto* text = std::get_if<QString>(&value)) return bind(parameter, *text);
    if (const auto* real = std::get_if<double>(&value)) return bind(parameter, *real);
    return bindNull(parameter);
}

Statement& Statement::bindNull(int parameter) {
    check(sqlite3_bind_null(m_statement, parameter));
    return *this;
}

Statement& Statement::bind(int parameter, const Row& row) {
    for (const Value& value : row) bind(parameter++, value);
    return *this;
}

bool Statement::step() {
    const int code = sqlite3_step(m_statement);
    if (code == SQLITE_ROW) return true;
    if (code != SQLITE_DONE) fail(code);
    return false;
}

void Statement::run() {
    while (step()) {
    }
    sqlite3_reset(m_statement);
}

void Statement::reset() { sqlite3_reset(m_statement); }

bool Statement::isNull(int column) const { return sqlite3_column_type(m_statement, column) == SQLITE_NULL; }

qint64 Statement::integer(int column) const { return sqlite3_column_int64(m_statement, column); }

int Statement::small(int column) const {
    const qint64 value = integer(column);
    if (value < -kMostSmall || value > kMostSmall)
        throw Damaged(QStringLiteral("The book is damaged: a number in it is out of its range."),
                      QString::fromUtf8(sqlite3_sql(m_statement)));
    return static_cast<int>(value);
}

std::optional<int> Statement::optionalInt(int column) const {
    return isNull(column) ? std::nullopt : std::optional<int>(small(column));
}

double Statement::real(int column) const { return sqlite3_column_double(m_statement, column); }

std::string_view Statement::bytes(int column) const {
    const auto* data = static_cast<const char*>(sqlite3_column_blob(m_statement, column));
    const auto size = static_cast<size_t>(sqlite3_column_bytes(m_statement, column));
    return data ? std::string_view(data, size) : std::string_view();
}

QString Statement::text(int column) const {
    const std::string_view utf8 = bytes(column);
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QByteArray Statement::blob(int column) const {
    if (isNull(column)) return {};
    const std::string_view data = bytes(column);
    return QByteArray(data.empty() ? "" : data.data(), static_cast<qsizetype>(data.size()));
}

Day Statement::day(int column) const {
    const std::string_view iso = bytes(column);
    const auto day = parseIsoDay(iso.data(), static_cast<qsizetype>(iso.size()));
    if (!day)
        throw Damaged(QStringLiteral("The book is damaged: a day in it cannot be read."),
                      QString::fromUtf8(sqlite3_sql(m_statement)));
    return *day;
}

std::optional<Day> Statement::optionalDay(int column) const {
    return isNull(column) ? std::nullopt : std::optional<Day>(day(column));
}

Value Statement::value(int column) const {
    switch (sqlite3_column_type(m_statement, column)) {
    case SQLITE_INTEGER:
        return integer(column);
    case SQLITE_FLOAT:
        return real(column);
    case SQLITE_NULL:
        return {};
    default:
        return text(column);
    }
}

Row Statement::row(int column, int count) const {
    Row cells;
    cells.reserve(static_cast<size_t>(count));
    for (int i = 0; i < count; ++i) cells.push_back(value(column + i));
    return cells;
}

} // namespace core::store
