#include "core/edit/compare_books.h"
#include "core/edit/medicine_lines.h"
#include "core/edit/session.h"
#include "core/edit/session_private.h"
#include "core/store/book_file.h"
#include "core/store/book_note.h"

#include <QSysInfo>

namespace core::edit {

namespace {

/// The account's name, until a person of the book has said who is writing.
QString accountName() {
    for (const char* name : {"USER", "LOGNAME", "USERNAME"})
        if (const QString value = qEnvironmentVariable(name); !value.isEmpty()) return value;
    return {};
}

} // namespace

void Session::Private::sign() const {
    db->signLock({author.isEmpty() ? accountName() : author, QSysInfo::machineHostName(), since, store::thisMachine()});
}

void Session::Private::begin(std::unique_ptr<store::Database> opened) {
    db = std::move(opened);
    if (!db->readOnly()) makeMedicineLines(*db);
    tops.reset();
    since = clock->nowUtc();
    othersSeen = db->othersVersion();
    sign();
}

void Session::setAuthor(const QString& name) {
    d->author = name.trimmed();
    d->sign();
}

void Session::needOwnFile() const { d->db->needOwnFile(); }

BooksStand Session::standTo(const store::Database& there) const { return standOf(*d->db, there); }

/// Of a reader: the file at the path now, where it is another one with the same book in it (a backup was put in its
/// place).
bool Session::Private::takeFileThere() {
    try {
        db->needOwnFile();
        return false;
    } catch (const BookReplaced& e) {
        if (e.how != BookReplaced::How::Other) return false;
    }
    auto there = store::Database::open(db->path(), store::Access::ReadOnly);
    if (there->bookId() != db->bookId()) return false;
    begin(std::move(there));
    return true;
}

bool Session::changedElsewhere() {
    if (readOnly() && d->takeFileThere()) return true;
    const std::optional<qint64> now = d->db->othersVersion();
    if (!now || now == d->othersSeen) return false;
    d->othersSeen = now;
    return true;
}

void Session::takeOver() {
    if (!readOnly()) return;
    auto there = store::Database::open(path(), store::Access::ReadWrite);
    if (there->bookId() != bookId())
        throw Error(Error::Kind::Book,
                    QStringLiteral("Another book lies at %1 by now: open that, or put this one back.")
                        .arg(store::shownPath(path())));
    d->begin(std::move(there));
}

void Session::overruleNote() {
    if (!readOnly()) return d->sign();
    store::forgetNote(path());
    takeOver();
}

} // namespace core::edit
