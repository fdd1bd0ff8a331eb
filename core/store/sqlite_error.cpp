#include "core/store/sqlite_error.h"

#include "core/base/damaged.h"

#include <sqlite3.h>

namespace core::store {

namespace {

/// Whether the call only read, and no edit was under way. One whose write failed is rolled back by SQLite at once.
bool onlyRead(sqlite3* db, int code, const QString& sql) {
    const bool written = code == SQLITE_IOERR_WRITE || code == SQLITE_IOERR_FSYNC || code == SQLITE_IOERR_DIR_FSYNC ||
                         code == SQLITE_IOERR_TRUNCATE || code == SQLITE_IOERR_DELETE;
    return db && !written && sqlite3_txn_state(db, nullptr) != SQLITE_TXN_WRITE &&
           (sql.startsWith(QLatin1String("SELECT")) || sql.startsWith(QLatin1String("WITH")) ||
            sql.startsWith(QLatin1String("PRAGMA")));
}

QString sentenceFor(int code, bool reading) {
    if (code == SQLITE_READONLY_DBMOVED) return movedSentence();
    if (code == SQLITE_READONLY_ROLLBACK)
        return QStringLiteral(
            "An edit of the book was cut short, and it cannot be read before that edit is taken back, "
            "for which it must be written: allow that, or copy the book and the file with -journal "
            "at its name's end beside it to a disk that can be written.");
    switch (code == SQLITE_IOERR_NOMEM ? SQLITE_NOMEM : code & 0xff) {
    case SQLITE_FULL:
        return QStringLiteral("The disk is full: nothing was written. Make room and try again.");
    case SQLITE_IOERR:
        return reading ? QStringLiteral("The disk failed while the book was read. Try again; if it fails again, copy "
                                        "the book to another disk.")
                       : QStringLiteral("The disk failed while the book was read or written: nothing was changed. Try "
                                        "again; if it fails again, copy the book to another disk.");
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return QStringLiteral("The book cannot be written here: the file or its folder is read-only. Nothing was "
                              "written. Allow it, or copy the book to where it may be written.");
    case SQLITE_CANTOPEN:
        return QStringLiteral("The book, or a file beside it, cannot be opened: nothing was written. Is its folder "
                              "still there, and may it be written?");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return QStringLiteral("The book is held by another program at this moment. Try again.");
    case SQLITE_CORRUPT:
        return QStringLiteral("The book is damaged. Use a backup of it.");
    case SQLITE_NOTADB:
        return QStringLiteral("This file is not a book of this program.");
    case SQLITE_NOMEM:
        return QStringLiteral(
            "This computer has no memory left: nothing was written. Close other programs and try again.");
    case SQLITE_TOOBIG:
        return QStringLiteral("A text is longer than the book can hold: nothing was written. Shorten it.");
    case SQLITE_CONSTRAINT:
        return QStringLiteral("The book refuses a row that breaks its rules: nothing was written.");
    default:
        return QStringLiteral("The book could not be used: nothing was changed. Try again; if it fails again, check "
                              "the book.");
    }
}

Error::Kind kindFor(int code) {
    switch (code & 0xff) {
    case SQLITE_CONSTRAINT:
    case SQLITE_TOOBIG:
        return Error::Kind::BadData;
    case SQLITE_MISUSE:
    case SQLITE_RANGE:
    case SQLITE_ERROR:
        return Error::Kind::Internal;
    default:
        return Error::Kind::Book;
    }
}

} // namespace

QString movedSentence() {
    return QStringLiteral("The book's file was moved, renamed or deleted while it was open: nothing was written. Put "
                          "it back, or open it where it is now.");
}

void throwSqlite(sqlite3* db, int code, const QString& what) {
    const QString message = QString::fromUtf8(db ? sqlite3_errmsg(db) : sqlite3_errstr(code));
    const QString sentence = sentenceFor(code, onlyRead(db, code, what));
    const QString detail = QStringLiteral("sqlite %1: %2 [%3]").arg(code).arg(message, what);
    if ((code & 0xff) == SQLITE_CORRUPT) throw Damaged(sentence, detail);
    if ((code & 0xff) == SQLITE_NOTADB) throw NoBook(sentence, detail);
    throw Error(kindFor(code), sentence, detail);
}

} // namespace core::store
