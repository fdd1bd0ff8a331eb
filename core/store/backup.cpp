#include "core/store/backup.h"

#include "core/store/book_file.h"
#include "core/store/database.h"
#include "core/store/hardening.h"
#include "core/store/watched.h"

#include <sqlite3.h>

namespace core::store {

namespace {

/// Of the whole way, as measured on a book of 20,000 colonies.
constexpr double kCopied = 0.6;

qint64 lastSeq(const Database& db) { return db.number("SELECT max(seq) FROM history"); }

bool sound(const Database& copy, const Progress& progress) {
    const Watched watched(copy.handle(), progress);
    progress.at(0);
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

void copyPages(const Database& db, const QString& path, const Progress& progress) {
    const CopyAllowed allowed(db);
    const Watched watched(db.handle(), progress);
    progress.at(0);
    db.prepare("VACUUM INTO ?").bind(1, path).run();
}

} // namespace

void copyBook(const Database& db, const QString& path, const Progress& progress) {
    NewBookFile file(path);
    try {
        const qint64 before = lastSeq(db);
        copyPages(db, file.part().path, progress.part(0, kCopied));
        const auto copy = Database::openCopy(file.part());
        // Another program may have written between: the copy is of some moment from before to now.
        const qint64 copied = lastSeq(*copy);
        if (!sound(*copy, progress.part(kCopied, 1)) || copy->bookId() != db.bookId() || copied < before ||
            copied > lastSeq(db))
            throw Error(Error::Kind::Book,
                        QStringLiteral("The copy is not sound, so it was removed again. Is the disk failing?"));
    } catch (const Error& e) {
        throwNaming(e, path, file.part().path);
    }
    file.keep();
}

} // namespace core::store
