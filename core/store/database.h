#pragma once

#include "core/base/error.h"
#include "core/store/book_lock.h"
#include "core/store/migration.h"
#include "core/store/own_file.h"
#include "core/store/statement.h"

#include <QString>

#include <memory>
#include <optional>
#include <span>

struct sqlite3;

namespace core::store {

struct BookFile;

/// "YwBk": marks the file as a book of this program.
constexpr qint32 kApplicationId = 0x5977426B;

enum class Access {
    ReadWrite,
    ReadOnly,
    ReadAsItIs, ///< an older version too, its tables as they were: for its history and its id
};

/// One open book file: a checked, hardened connection. Reads and writes stand in row_store.h, reads.h, history_rows.h
/// and snapshot_reader.h. One thread at a time.
class Database {
public:
    /// Makes an empty book with the shipped box kinds, whole or not at all, and opens it. Throws Error(Book) where the
    /// file exists or cannot be made.
    static std::unique_ptr<Database> create(const QString& path);
    /// Throws Error(Book): missing, a folder, not a book, damaged, newer than the program; for ReadWrite also
    /// read-only, or BookHeld by another. An older book is backed up and migrated (ReadWrite), refused (ReadOnly) or
    /// read (ReadAsItIs). The backing up and the migrating tell `progress`; Stopped leaves everything as it was.
    static std::unique_ptr<Database> open(const QString& path, Access access, const Progress& progress = {});
    /// The same with other migrations than the book's.
    static std::unique_ptr<Database> open(const QString& path, Access access, std::span<const Migration> migrations);
    /// For writing: the file that lies at the path of `before` now, under the same lock. Throws as open(); then
    /// `before` is as it was.
    static std::unique_ptr<Database> openAgain(const Database& before);
    /// A book in memory, empty, migrated.
    static std::unique_ptr<Database> inMemory(std::span<const Migration> migrations);
    /// Whether an older version of the program wrote the book. Throws Error(Book): it is no book, or a newer one's.
    static bool isOlder(const QString& path);
    /// A copy just made, unlocked, for checking it.
    static std::unique_ptr<Database> openCopy(const BookFile& file);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    const QString& path() const { return m_path; }
    bool readOnly() const { return m_access != Access::ReadWrite; }
    sqlite3* handle() const { return m_handle; }
    bool inTransaction() const;

    Statement prepare(std::string_view sql) const;
    void exec(std::string_view sql) const;
    /// The first cell of the first row as a number; 0 where there is none.
    qint64 number(std::string_view sql) const;
    /// The book's own id, made at random when it was; empty where the file has none of that form.
    QString bookId() const;
    /// Says beside the book who has it, over any other machine's note; nothing where it is only read.
    void signLock(const BookHolder& holder) const;
    /// A number that is another once someone else has written to the file; nullopt while that is being done.
    std::optional<qint64> othersVersion() const;
    /// Throws BookReplaced where the file at the path is not, or no longer as, the one that is open; a reader minds
    /// only whether it is the same file. Done before each write; quick.
    void needOwnFile() const;
    /// How much of the file is kept in memory; the more, the faster are large writes.
    void setCacheMegabytes(int megabytes) const;

private:
    friend class Transaction;
    Database(QString path, Access access);
    static std::unique_ptr<Database> open(const BookFile& file, Access access, std::span<const Migration> migrations,
                                          std::shared_ptr<BookLock> lock, const Progress& progress = {});
    void bringUpToDate(int version, std::span<const Migration> migrations, const Progress& progress);
    void connect(const QString& uri);
    void configure();
    void fill(std::span<const Migration> migrations);
    void checkIdentity(int newest) const;
    void checkSize() const;
    void checkPages() const;

    QString m_path;
    Access m_access;
    std::shared_ptr<BookLock> m_lock; ///< nullptr: it is only read
    QString m_connection;
    sqlite3* m_handle = nullptr;
    std::shared_ptr<StatementPool> m_pool;
    mutable std::optional<OwnFile> m_file; ///< not of a book in memory or in the making
};

/// BEGIN IMMEDIATE; rolls back unless commit() was reached. Throws BookReplaced as needOwnFile does.
class Transaction {
public:
    explicit Transaction(const Database& db);
    ~Transaction();
    void commit();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

private:
    void rollBack() const;
    const Database& m_db;
    bool m_done = false;
};

/// All reads while it lives see one state of the book. Inside a Transaction it does nothing.
class ReadTransaction {
public:
    explicit ReadTransaction(const Database& db);
    ~ReadTransaction();
    ReadTransaction(const ReadTransaction&) = delete;
    ReadTransaction& operator=(const ReadTransaction&) = delete;

private:
    const Database& m_db;
    bool m_own = false;
};

} // namespace core::store
