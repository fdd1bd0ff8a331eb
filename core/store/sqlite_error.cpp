#include "core/store/sqlite_error.h"

#include <sqlite3.h>

namespace core::store {

namespace {

QString sentenceFor(int code, const QString& message) {
    if (code == SQLITE_READONLY_DBMOVED) return movedSentence();
    switch (code & 0xff) {
    case SQLITE_FULL:
        return QStringLiteral("The disk is full: nothing was written. Make room and try again.");
    case SQLITE_IOERR:
        return QStringLiteral("The disk failed while the book was read or written: nothing was changed.");
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return QStringLiteral("The book cannot be written here: the file or its folder is read-only.");
    case SQLITE_CANTOPEN:
        return QStringLiteral(
            "The book, or a file beside it, cannot be opened. Is its folder still there, and may it be "
            "written?");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return QStringLiteral("The book is held by another program at this moment. Try again.");
    case SQLITE_CORRUPT:
        return QStringLiteral("The book is damaged. Use a backup of it.");
    case SQLITE_NOTADB:
        return QStringLiteral("This file is not a book of this program.");
    case SQLITE_CONSTRAINT:
        return QStringLiteral("The book refuses a row that breaks its rules: %1.").arg(message);
    default:
        return QStringLiteral("The book could not be used: %1.").arg(message);
    }
}

Error::Kind kindFor(int code) {
    switch (code & 0xff) {
    case SQLITE_CONSTRAINT:
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

Error sqliteError(sqlite3* db, int code, const QString& what) {
    const QString message = QString::fromUtf8(db ? sqlite3_errmsg(db) : sqlite3_errstr(code));
    return Error(kindFor(code), sentenceFor(code, message),
                 QStringLiteral("sqlite %1: %2 [%3]").arg(code).arg(message, what));
}

} // namespace core::store
