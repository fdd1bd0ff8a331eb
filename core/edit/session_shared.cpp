#include "core/base/book_held.h"
#include "core/base/book_replaced.h"
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

std::optional<HistoryLine> newestLine(const store::Database& db) {
    const auto lines = store::listHistory(db, 1);
    return lines.empty() ? std::nullopt : std::optional(shownLine(lines.front()));
}

bool sameLine(const std::optional<HistoryLine>& a, const std::optional<HistoryLine>& b) {
    if (!a || !b) return !a && !b;
    return a->seq == b->seq && a->at == b->at && a->by == b->by && a->text == b->text;
}

} // namespace

/// The file there now, where it is the book as it was last written here.
bool Session::Private::openAgain() {
    auto again = store::Database::openAgain(*db);
    if (again->bookId() != bookId || !sameLine(newestLine(*again), last)) return false;
    begin(std::move(again));
    return true;
}

void Session::Private::needFile() {
    try {
        db->needOwnFile();
        db->othersVersion();
    } catch (const BookHeld&) {
        throw;
    } catch (const BookReplaced& e) { // put back as another file: a stick, a backup, a sync program
        if (e.how != BookReplaced::How::Other) throw;
        const BookReplaced replaced = e;
        try {
            if (openAgain()) return;
        } catch (const BookHeld&) {
            throw;
        } catch (const Error&) {
            throw replaced;
        }
        throw replaced;
    } catch (const Error& e) { // a disk that was taken out and put back serves only those who open the file again
        const Error silent = e;
        try {
            if (openAgain()) return;
        } catch (const Error& now) {
            throw silent;
        }
        throw silent;
    }
}

void Session::Private::wrote(const HistoryLine& line) {
    last = line;
    tops.reset();
}

void Session::Private::sign() const {
    db->signLock({author.isEmpty() ? accountName() : author, QSysInfo::machineHostName(), since, store::thisMachine()});
}

void Session::Private::begin(std::unique_ptr<store::Database> opened) {
    db = std::move(opened);
    if (!db->readOnly()) makeMedicineLines(*db);
    tops.reset();
    since = clock->nowUtc();
    othersSeen = db->othersVersion();
    bookId = db->bookId();
    last = newestLine(*db);
    sign();
}

void Session::setAuthor(const QString& name) {
    d->author = name.trimmed();
    d->sign();
}

void Session::setProgress(const Progress& progress) { d->progress = progress; }

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
    if (!readOnly()) d->needFile();
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
