#include "core/edit/book_copies.h"

#include "core/base/input_file.h"
#include "core/base/natural_order.h"
#include "core/edit/history_reader.h"
#include "core/edit/session_private.h"
#include "core/store/book_file.h"
#include "core/store/book_mark.h"
#include "core/store/book_note.h"
#include "core/store/history_rows.h"
#include "core/store/part_file.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>

#include <algorithm>

namespace core::edit {

namespace {

using store::Database;

BookCopyFound foundAt(const Database& book, const QFileInfo& file) {
    BookCopyFound found;
    found.path = file.absoluteFilePath();
    found.bytes = file.size();
    try {
        const auto db = Database::open(found.path, store::Access::ReadAsItIs);
        found.stand = standOf(book, *db);
        for (const store::HistoryRow& row : store::listHistory(*db, 1)) found.last = shownLine(row);
    } catch (const Error& e) {
        found.problem = e.userMessage();
    }
    return found;
}

/// The first of "NAME.EXT", "NAME 2.EXT", … that is free in the folder.
QString freeName(const QDir& folder, const QString& name) {
    const QFileInfo file(name);
    QString free = name;
    for (int n = 2; QFileInfo::exists(folder.filePath(free)); ++n)
        free = QStringLiteral("%1 %2.%3").arg(file.completeBaseName()).arg(n).arg(file.suffix());
    return folder.filePath(free);
}

Error notMoved(const QString& copy) {
    return Error(Error::Kind::Book,
                 QStringLiteral("%1 cannot be put aside: its folder cannot be written. It is where it was.")
                     .arg(store::shownPath(copy)));
}

} // namespace

bool BookCopyFound::hasMore() const {
    return !problem.isEmpty() || stand == BooksStand::Parted || stand == BooksStand::ThereGoesOn;
}

QString BookCopyFound::mark() const {
    const QString name = QFileInfo(path).fileName();
    if (!last) return QStringLiteral("%1|%2").arg(name, QString::number(bytes));
    return QStringLiteral("%1|%2|%3").arg(name, QString::number(last->seq), last->at.toString(Qt::ISODateWithMs));
}

std::vector<BookCopyFound> copiesBeside(const QString& book, const std::function<bool()>& stopped) {
    std::vector<BookCopyFound> copies;
    const auto own = Database::open(book, store::Access::ReadAsItIs);
    const QString id = own->bookId();
    QDirIterator files(QFileInfo(book).absolutePath(), QDir::Files | QDir::Hidden | QDir::NoSymLinks);
    while (files.hasNext()) {
        if (stopped && stopped()) return {};
        const QFileInfo file(files.next());
        if (store::inTheMaking(file.fileName()) || store::sameFile(book, file.filePath())) continue;
        const auto there = store::bookIdIn(file.filePath());
        if (there && (there->isEmpty() || *there == id)) copies.push_back(foundAt(*own, file));
    }
    std::ranges::stable_sort(copies, [](const auto& a, const auto& b) { return naturalCompare(a.path, b.path) < 0; });
    return copies;
}

QString putAside(const QString& copy) {
    const QFileInfo file(copy);
    const QDir folder(file.absoluteDir().filePath(QStringLiteral("put aside")));
    if (!folder.mkpath(QStringLiteral("."))) throw notMoved(copy);
    const QString to = freeName(folder, file.fileName());
    {
        const store::BookLock free(copy); // nobody writes it
        const QString journal = QStringLiteral("-journal");
        // Cut short between the two names the copy would be without what it needs.
        const bool hot = !store::settleJournal(copy) && QFile::rename(copy + journal, to + journal);
        if (!QFile::rename(copy, to)) {
            if (hot) QFile::rename(to + journal, copy + journal);
            throw notMoved(copy);
        }
    }
    return to;
}

bool notedElsewhere(const QString& book) {
    QFile note(book + QStringLiteral("-lock"));
    if (!noPlainFile(note.fileName()).isEmpty() || !note.open(QIODevice::ReadOnly)) return false;
    return store::ofAnotherMachine(store::holderIn(note.read(store::kLongestNote)));
}

std::optional<QString> keepWhatIsOpen(const Session& session) {
    bool hasAll = false;
    try {
        const auto there = Database::open(session.path(), store::Access::ReadAsItIs);
        const BooksStand stand = session.standTo(*there);
        hasAll = stand == BooksStand::Alike || stand == BooksStand::ThereGoesOn;
    } catch (const Error& e) {
        qWarning("what lies at the book's path is not read: %s", e.what());
    }
    if (hasAll) return {};
    const QFileInfo book(session.path());
    const QString stamp = session.clock().nowUtc().toLocalTime().toString(QStringLiteral("yyyy-MM-dd HHmmss"));
    const QString to = freeName(book.absoluteDir(),
                                QStringLiteral("%1 as it was open %2.yardwright").arg(book.completeBaseName(), stamp));
    session.backUp(to);
    return to;
}

} // namespace core::edit
