#pragma once

#include "core/base/day.h"
#include "core/model/row.h"

#include <QByteArray>
#include <QString>

#include <memory>
#include <optional>
#include <string_view>

struct sqlite3;
struct sqlite3_stmt;

namespace core::store {

/// Prepared statements that wait to be used again, by their SQL.
class StatementPool;

/// One prepared statement in use; goes back to the pool, reset, when it is destroyed, so that no read stays open.
/// All calls throw Error on failure. Parameters count from 1, columns from 0.
class Statement {
public:
    Statement(std::shared_ptr<StatementPool> pool, std::string_view sql);
    ~Statement();
    Statement(Statement&& other) noexcept;
    Statement& operator=(Statement&&) = delete;
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    Statement& bind(int parameter, qint64 value);
    Statement& bind(int parameter, double value);
    Statement& bind(int parameter, Day day);
    Statement& bind(int parameter, const QString& text);     ///< empty: NULL
    Statement& bind(int parameter, const QByteArray& bytes); ///< a null array: NULL
    Statement& bind(int parameter, const Value& value);
    Statement& bindNull(int parameter);
    /// Binds cell after cell from `parameter` on.
    Statement& bind(int parameter, const Row& row);

    /// True while there is a row.
    bool step();
    /// Runs to the end and makes ready for the next values.
    void run();
    void reset();

    bool isNull(int column) const;
    qint64 integer(int column) const;
    /// Throws Error(Book) beyond kMostSmall.
    int small(int column) const;
    std::optional<int> optionalInt(int column) const;
    double real(int column) const;
    QString text(int column) const;           ///< NULL: empty
    std::string_view bytes(int column) const; ///< valid until the next step
    QByteArray blob(int column) const;        ///< NULL: a null array
    Day day(int column) const;                ///< throws Error(Book) when it is none
    std::optional<Day> optionalDay(int column) const;
    Value value(int column) const;
    /// `count` cells from `column` on.
    Row row(int column, int count) const;

private:
    [[noreturn]] void fail(int code) const;
    void check(int code) const;

    std::shared_ptr<StatementPool> m_pool;
    sqlite3_stmt* m_statement = nullptr;
};

} // namespace core::store
