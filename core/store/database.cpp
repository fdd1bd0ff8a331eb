#include "core/store/database.h"

#include "core/base/damaged.h"
#include "core/store/book_file.h"
#include "core/store/hardening.h"
#include "core/store/sqlite_error.h"
#include "core/store/statement_pool.h"
#include "core/store/watched.h"

#include <QDebug>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSqlDatabase>
#include <QSqlDriver>
#include <QSqlError>
#include <QUuid>
#include <QVariant>

#include <sqlite3.h>

namespace core::store {

namespace {

constexpr int kBusyMs = 5000;
constexpr qint64 kPagesCheckedAtOpen = 2000; ///< up to 8 MB: some 20 ms
constexpr qint64 kPagesMost = 16'000'000;    ///< 64 GB

int codeOf(const QSqlError& error) {
    bool known = false;
    const int code = error.nativeErrorCode().toInt(&known);
    return known ? code : SQLITE_CANTOPEN;
}

/// A page that the disk does not give is no damage of the book: SQLite's code of that, or 0.
int readingFailed(const QString& found) {
    static const QRegularExpression unread(QStringLiteral("unable to get the page\\. error code=(\\d+)"));
    const int code = unread.match(found).captured(1).toInt();
    return (code & 0xff) == SQLITE_IOERR || (code & 0xff) == SQLITE_NOMEM ? code : 0;
}

} // namespace

Database::Database(QString path, Access access) : m_path(std::move(path)), m_access(access) {}

Database::~Database() {
    m_pool.reset();
    m_handle = nullptr;
    if (!m_connection.isEmpty()) QSqlDatabase::removeDatabase(m_connection);
}

void Database::connect(const QString& uri) {
    m_connection = QStringLiteral("book-") + QUuid::createUuid().toString(QUuid::WithoutBraces);
    QSqlDatabase db = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_connection);
    db.setConnectOptions(QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(kBusyMs));
    db.setDatabaseName(uri);
    if (!db.open()) throwSqlite(nullptr, codeOf(db.lastError()), db.lastError().text());
    const QVariant handle = db.driver()->handle();
    if (!handle.isValid() || qstrcmp(handle.typeName(), "sqlite3*") != 0)
        throw Error(Error::Kind::Internal, QStringLiteral("The database driver is not the expected one."));
    m_handle = *static_cast<sqlite3* const*>(handle.constData());
    m_pool = std::make_shared<StatementPool>(m_handle);
    harden(m_handle);
}

void Database::configure() {
    exec("PRAGMA foreign_keys = ON");
    // EXTRA: the journal's deletion, which is the commit, is on the disk before the edit is acknowledged. With FULL a
    // power cut brings the journal back, and with it the book as it was before the edit.
    exec("PRAGMA synchronous = EXTRA");
    setCacheMegabytes(16);
    if (readOnly())
        exec("PRAGMA query_only = ON");
    else
        exec("PRAGMA journal_mode = DELETE");
}

void Database::checkIdentity(int newest) const {
    if (number("PRAGMA application_id") != kApplicationId)
        throw NoBook(QStringLiteral("%1 is not a book of this program.").arg(shownPath(m_path)));
    const qint64 version = number("PRAGMA user_version");
    if (version > newest) throw newerBook(m_path, version, newest);
    if (version < 1)
        throw Damaged(
            QStringLiteral("%1 is damaged: its version is missing. Use a backup of it.").arg(shownPath(m_path)));
}

void Database::checkSize() const {
    const qint64 pages = number("PRAGMA page_count");
    if (pages > kPagesMost)
        throw Error(Error::Kind::Book, QStringLiteral("%1 is larger than a book can be.").arg(shownPath(m_path)));
    if (QFileInfo(m_path).size() < pages * number("PRAGMA page_size"))
        throw Damaged(QStringLiteral("%1 is damaged: its end is missing. Use a backup of it.").arg(shownPath(m_path)));
}

void Database::checkPages() const {
    if (number("PRAGMA page_count") > kPagesCheckedAtOpen) return;
    Statement check = prepare("PRAGMA quick_check(100)");
    while (check.step()) {
        const QString said = check.text(0);
        // A value out of its range is for the check of the book to report; the file itself is sound.
        if (said == QLatin1String("ok") || said.startsWith(QLatin1String("CHECK constraint"))) continue;
        if (const int code = readingFailed(said)) throwSqlite(nullptr, code, said);
        throw Damaged(QStringLiteral("%1 is damaged. Use a backup of it.").arg(shownPath(m_path)), said);
    }
}

std::unique_ptr<Database> Database::create(const QString& path) {
    NewBookFile file(path);
    try {
        Database db(file.part().path, Access::ReadWrite);
        db.connect(file.part().uri);
        db.fill(bookMigrations());
    } catch (const Error& e) {
        throwNaming(e, path, file.part().path);
    }
    file.keep();
    return open(path, Access::ReadWrite);
}

std::unique_ptr<Database> Database::open(const QString& path, Access access, const Progress& progress) {
    const BookFile file = lookAt(path, access);
    return open(file, access, bookMigrations(),
                access == Access::ReadWrite ? std::make_shared<BookLock>(file.path) : nullptr, progress);
}

std::unique_ptr<Database> Database::open(const QString& path, Access access, std::span<const Migration> migrations) {
    const BookFile file = lookAt(path, access);
    return open(file, access, migrations,
                access == Access::ReadWrite ? std::make_shared<BookLock>(file.path) : nullptr);
}

std::unique_ptr<Database> Database::openAgain(const Database& before) {
    const BookFile file = lookAt(before.path(), Access::ReadWrite);
    before.m_lock->need();
    return open(file, Access::ReadWrite, bookMigrations(), before.m_lock);
}

std::unique_ptr<Database> Database::open(const BookFile& file, Access access, std::span<const Migration> migrations,
                                         std::shared_ptr<BookLock> lock, const Progress& progress) {
    std::unique_ptr<Database> db(new Database(file.path, access));
    db->m_lock = std::move(lock);
    const int newest = migrations.back().version;
    bool stranger = false;
    try {
        db->connect(file.uri);
        stranger = true;
        db->checkIdentity(newest);
        db->checkSize();
        // Nothing of the tables is read, no CHECK of theirs is run, before they are known to be ours.
        const auto version = static_cast<int>(db->number("PRAGMA user_version"));
        checkSchema(*db, migrations.first(static_cast<size_t>(version)));
        stranger = false;
        db->checkPages();
        db->configure();
        if (version < newest && access != Access::ReadAsItIs) {
            if (access == Access::ReadOnly) throw olderBook(file.path);
            db->bringUpToDate(version, migrations, progress);
        }
        db->m_file.emplace(file.path, db->m_handle);
    } catch (const Error& e) {
        // As long as its tables are not known any error is the file's, whatever SQLite calls it.
        if (stranger && e.kind() == Error::Kind::Internal)
            throw Damaged(
                QStringLiteral("%1 is damaged, or no book of this program: it cannot be read. Use a backup of it.")
                    .arg(shownPath(file.path)),
                e.detail());
        throwNaming(e, file.path);
    }
    return db;
}

void Database::bringUpToDate(int version, std::span<const Migration> migrations, const Progress& progress) {
    constexpr double kCopied = 0.3; // of the way, about
    const QString copy = backUpBeforeMigration(
        *this, version, progress.part(0, kCopied, QStringLiteral("Keeping a copy of it as it is")));
    try {
        migrate(*this, migrations, progress.part(kCopied, 1, QStringLiteral("Bringing its records up to date")));
    } catch (const Stopped&) {
        QFile::remove(copy);
        throw;
    }
    checkSchema(*this, migrations);
}

std::unique_ptr<Database> Database::inMemory(std::span<const Migration> migrations) {
    std::unique_ptr<Database> db(new Database(QStringLiteral(":memory:"), Access::ReadWrite));
    db->connect(QStringLiteral("file::memory:"));
    db->fill(migrations);
    return db;
}

std::unique_ptr<Database> Database::openCopy(const BookFile& file) {
    std::unique_ptr<Database> db(new Database(file.path, Access::ReadOnly));
    db->connect(file.uri);
    db->checkIdentity(bookMigrations().back().version);
    db->configure();
    return db;
}

bool Database::isOlder(const QString& path) {
    try {
        const auto book = openCopy(lookAt(path, Access::ReadOnly));
        return book->number("PRAGMA user_version") < bookMigrations().back().version;
    } catch (const Error& e) {
        throwNaming(e, path);
    }
}

void Database::fill(std::span<const Migration> migrations) {
    configure();
    exec(QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId).toStdString());
    migrate(*this, migrations);
    prepare("INSERT INTO book (id, uuid) VALUES (1, ?)")
        .bind(1, QUuid::createUuid().toString(QUuid::WithoutBraces))
        .run();
}

bool Database::inTransaction() const { return sqlite3_get_autocommit(m_handle) == 0; }

Statement Database::prepare(std::string_view sql) const { return Statement(m_pool, sql); }

void Database::exec(std::string_view sql) const {
    const std::string text(sql);
    const int code = sqlite3_exec(m_handle, text.c_str(), nullptr, nullptr, nullptr);
    throwStopped(code);
    if (code != SQLITE_OK) throwSqlite(m_handle, code, QString::fromStdString(text));
}

qint64 Database::number(std::string_view sql) const {
    Statement statement = prepare(sql);
    return statement.step() ? statement.integer(0) : 0;
}

QString Database::bookId() const {
    Statement statement = prepare("SELECT uuid FROM book");
    const QString id = statement.step() ? statement.text(0) : QString();
    // Names of files are made of it: nothing but an id gets there from a file.
    return QUuid::fromString(id).toString(QUuid::WithoutBraces) == id ? id : QString();
}

void Database::signLock(const BookHolder& holder) const {
    if (m_lock) m_lock->sign(holder);
}

std::optional<qint64> Database::othersVersion() const {
    sqlite3_busy_timeout(m_handle, 0);
    sqlite3_stmt* ask = nullptr;
    int code = sqlite3_prepare_v2(m_handle, "PRAGMA data_version", -1, &ask, nullptr);
    if (code == SQLITE_OK) code = sqlite3_step(ask);
    const std::optional<qint64> version =
        code == SQLITE_ROW ? std::optional<qint64>(sqlite3_column_int64(ask, 0)) : std::nullopt;
    sqlite3_finalize(ask);
    sqlite3_busy_timeout(m_handle, kBusyMs);
    if (!version && (code & 0xff) != SQLITE_BUSY && (code & 0xff) != SQLITE_LOCKED)
        throwSqlite(m_handle, code, QStringLiteral("data_version"));
    return version;
}

void Database::needOwnFile() const {
    if (!m_file) return;
    if (readOnly()) return m_file->needPlace();
    m_file->need();
    m_lock->need();
}

void Database::setCacheMegabytes(int megabytes) const {
    exec(QStringLiteral("PRAGMA cache_size = -%1").arg(megabytes * 1024).toStdString());
}

Transaction::Transaction(const Database& db) : m_db(db) {
    db.needOwnFile(); // what is no book any more would be called damaged
    db.exec("BEGIN IMMEDIATE");
    try {
        db.needOwnFile();
    } catch (...) {
        rollBack();
        throw;
    }
}

Transaction::~Transaction() {
    if (!m_done) rollBack();
}

void Transaction::rollBack() const {
    sqlite3* const db = m_db.handle();
    // SQLite has rolled back by itself after some failures (full disk): then there is no transaction any more.
    if (m_db.inTransaction() && sqlite3_exec(db, "ROLLBACK", nullptr, nullptr, nullptr) != SQLITE_OK)
        qWarning("rollback failed: %s", sqlite3_errmsg(db));
    // Where the disk did not even take that, the file stays locked, and fails, until another rollback lets it go: the
    // journal is beside it, and whoever reads next takes the half edit back.
    if (sqlite3_txn_state(db, nullptr) != SQLITE_TXN_NONE)
        sqlite3_exec(db, "BEGIN; ROLLBACK", nullptr, nullptr, nullptr);
    // What FTS5 keeps in memory of the notes' index may be of the edit that is gone, where the disk failed under it,
    // and the next edit would write that: it is forgotten.
    sqlite3_exec(db, "PRAGMA writable_schema = RESET", nullptr, nullptr, nullptr);
}

void Transaction::commit() {
    if (m_db.m_file) m_db.m_file->noteNextLine();
    m_db.exec("COMMIT");
    m_done = true;
    if (m_db.m_file) m_db.m_file->noteWritten();
}

ReadTransaction::ReadTransaction(const Database& db) : m_db(db), m_own(!db.inTransaction()) {
    if (m_own) db.exec("BEGIN");
}

ReadTransaction::~ReadTransaction() {
    if (!m_own || !m_db.inTransaction()) return;
    // FTS5's look at its index counts as writing, and SQLite would put its header right then: none of it stays.
    const bool wrote = sqlite3_txn_state(m_db.handle(), "main") == SQLITE_TXN_WRITE;
    sqlite3_exec(m_db.handle(), wrote ? "ROLLBACK" : "COMMIT", nullptr, nullptr, nullptr);
}

} // namespace core::store
