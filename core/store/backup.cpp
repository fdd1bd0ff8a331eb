#include "core/store/backup.h"

#include "core/store/book_file.h"
#include "core/store/database.h"
#include "core/store/hardening.h"

#include <sqlite3.h>

namespace core::store {

namespace {

qint64 lastSeq(const Database& db) { return db.number("SELECT max(seq) FROM history"); }

bool sound(const Database& copy) {
    Statement check = copy.prepare("PRAGMA integrity_check(1)");
    return check.step() && check.text(0) == QLatin1String("ok");
}

/// A reader's connection refuses all writes, that of a copy too, and any knows no other file: allowed while this lives.
struct CopyAllowed {
    const Database& db;
    explicit CopyAllowed(const Database& of) : db(of) {
        db.exec("PRAGMA query_only = OFF");
        allowOtherFiles(db.handle(), true);
    }
    ~CopyAllowed() {
        allowOtherFiles(db.handle(), false);
        if (db.readOnly()) sqlite3_exec(db.handle(), "PRAGMA query_only = ON", nullptr, nullptr, nullptr);
    }
    CopyAllowed(const CopyAllowed&) = delete;
    CopyAllowed& operator=(const CopyAllowed&) = delete;
};

void copyPages(const Database& db, const QString& path) {
    const CopyAllowed allowed(db);
    db.prepare("VACUUM INTO ?").bind(1, path).run();
}

} // namespace

void copyBook(const Database& db, const QString& path) {
    NewBookFile file(path);
    try {
        const qint64 before = lastSeq(db);
        copyPages(db, file.part().path);
        const auto copy = Database::openCopy(file.part());
        // Another program may have written between: the copy is of some moment from before to now.
        const qint64 copied = lastSeq(*copy);
        if (!sound(*copy) || copy->bookId() != db.bookId() || copied < before || copied > lastSeq(db))
            throw Error(Error::Kind::Book,
                        QStringLiteral("The copy is not sound, so it was removed again. Is the disk failing?"));
    } catch (const Error& e) {
        throw namingFile(e, path);
    }
    file.keep();
}

} // namespace core::store
