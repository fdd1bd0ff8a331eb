#include "core/store/book_file.h"

#include "core/base/damaged.h"
#include "core/base/input_file.h"
#include "core/store/beside_book.h"
#include "core/store/book_mark.h"
#include "core/store/disk_names.h"
#include "core/store/hardening.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUrl>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core::store {

namespace {

Error refused(const QString& sentence, const QString& path, int error = 0) {
    return Error(Error::Kind::Book, sentence.arg(shownPath(path)),
                 error == 0 ? path : path + QStringLiteral(": ") + QString::fromLocal8Bit(strerror(error)));
}

QString uriOf(const QString& path, const char* mode) {
    return QString::fromLatin1(QUrl::fromLocalFile(path).toEncoded(QUrl::FullyEncoded)) + QStringLiteral("?mode=") +
           QLatin1String(mode);
}

bool writable(const QString& path) { return access(QFile::encodeName(path).constData(), W_OK) == 0; }

Error notOnDisk(const QString& path, int error) {
    return refused(QStringLiteral("%1 cannot be kept: the disk failed while it was written."), path, error);
}

nlink_t namesOf(const QString& path) {
    struct stat found {};
    return stat(QFile::encodeName(path).constData(), &found) == 0 ? found.st_nlink : 0;
}

/// Where names cannot be changed in one go, a program that was killed left the one in the making beside the book's own.
void dropNamesInTheMaking(const QString& path) {
    const QDir folder = QFileInfo(path).absoluteDir();
    for (const QString& name : folder.entryList(namesInTheMaking(), QDir::Files | QDir::Hidden))
        if (sameFile(path, folder.filePath(name)) && name != QFileInfo(path).fileName())
            QFile::remove(folder.filePath(name));
}

/// Journal and lock lie beside the name, not the file: written under two names a book would have two of each.
void needOneName(const QString& path) {
    if (namesOf(path) > 1) dropNamesInTheMaking(path);
    if (namesOf(path) > 1)
        throw refused(QStringLiteral("The book %1 cannot be written: its file has a second name (a hard link), and "
                                     "written under both it would be spoilt. Copy it to a name of its own first, and "
                                     "open that."),
                      path);
}

/// As an exchange of names, for disks that cannot: the book is copied to `part` before it is replaced. Returns 0 or an
/// errno; throws Error(Book).
int takePlaceByCopy(const QString& part, const QString& book) {
    const PartFile spareFile(QFileInfo(part).absolutePath());
    const QString& spare = spareFile.path;
    if (const int error = giveName(part, spare)) return error;
    try {
        NewBookFile copy(part);
        QFile::remove(copy.part().path);
        if (!QFile::copy(book, copy.part().path)) throw notOnDisk(part, ENOSPC);
        copy.keep();
    } catch (const Error&) {
        giveName(spare, part);
        throw;
    }
    const int error = replaceName(spare, book);
    if (error != 0) replaceName(spare, part);
    return error;
}

/// Returns 0 or an errno; throws Error(Book).
int changePlaces(const QString& part, const QString& book) {
    if (!QFileInfo::exists(book)) return giveName(part, book);
    const QString journal = QStringLiteral("-journal");
    const QString left = part + QStringLiteral("-left");
    const bool hot = !settleJournal(book) && QFile::rename(book + journal, left);
    // On the disk too the journal is gone before the names change: after a power cut that of the one would else lie
    // beside the other, and be played back into it.
    int error = syncFolderOf(book);
    if (error == 0) error = exchangeNames(part, book);
    if (error == EINVAL || error == ENOSYS) error = takePlaceByCopy(part, book);
    if (hot) QFile::rename(left, (error == 0 ? part : book) + journal);
    return error;
}

} // namespace

QString shownPath(const QString& path) { return QDir::toNativeSeparators(path); }

BookFile lookAt(const QString& path, Access access) {
    const QFileInfo info(path);
    if (!info.exists()) throw refused(QStringLiteral("There is no book %1."), path);
    if (const QString other = noPlainFile(path); !other.isEmpty())
        throw refused(QStringLiteral("%1 is %2, not a book.").arg(QStringLiteral("%1"), other), path);
    BookFile file;
    file.path = info.canonicalFilePath();
    if (!info.isReadable()) throw refused(QStringLiteral("The book %1 cannot be read: access is denied."), path);
    const bool canWrite = writable(file.path) && writable(QFileInfo(file.path).path());
    if (access == Access::ReadWrite && !canWrite)
        throw refused(QStringLiteral("The book %1 cannot be written: the file or its folder is read-only."), path);
    if (access == Access::ReadWrite) needOneName(file.path);
    needOwnFilesBeside(file.path);
    // A reader opens for writing too where it can: only so is a killed program's half edit taken back. It writes
    // nothing else (query_only).
    file.uri = uriOf(file.path, canWrite ? "rw" : "ro");
    return file;
}

NewBookFile::NewBookFile(const QString& path)
    : m_path(QFileInfo(path).absoluteFilePath()), m_name(QFileInfo(path).absolutePath()) {
    if (QFileInfo::exists(path) || QFileInfo(path).isSymLink())
        throw refused(QStringLiteral("%1 exists already: a new book needs a new name."), path);
    const QString folder = QFileInfo(path).absolutePath();
    if (!QFileInfo(folder).isDir()) throw refused(QStringLiteral("There is no folder %1."), folder);
    m_part.path = m_name.path;
    m_part.uri = uriOf(m_part.path, "rw");
    const int file = open(QFile::encodeName(m_part.path).constData(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (file < 0) throw refused(QStringLiteral("%1 cannot be made: its folder cannot be written."), path, errno);
    close(file);
}

void keepAs(const QString& part, const QString& path) {
    if (const int error = syncFile(part)) throw notOnDisk(path, error);
    if (const int error = giveName(part, path))
        throw refused(QStringLiteral("%1 cannot be made: the name is taken or not allowed."), path, error);
    if (const int error = syncFolderOf(path)) throw notOnDisk(path, error);
}

void NewBookFile::keep() { keepAs(m_part.path, m_path); }

void putAt(const QString& part, const QString& path) {
    if (const int error = replaceName(part, path)) throw refused(QStringLiteral("%1 cannot be written."), path, error);
    if (const int error = syncFolderOf(path)) throw notOnDisk(path, error);
}

bool settleJournal(const QString& book) {
    QFile journal(book + QStringLiteral("-journal"));
    if (!journal.exists()) return true;
    sqlite3* db = nullptr;
    if (sqlite3_open_v2(QFile::encodeName(book).constData(), &db, SQLITE_OPEN_READWRITE, nullptr) == SQLITE_OK) {
        harden(db);
        sqlite3_exec(db, "PRAGMA schema_version", nullptr, nullptr, nullptr);
    }
    sqlite3_close(db);
    return !journal.exists();
}

void takePlace(const QString& part, const QString& book) {
    try {
        if (const int error = syncFile(part)) throw notOnDisk(book, error);
        if (const int error = changePlaces(part, book))
            throw refused(QStringLiteral("%1 cannot be replaced: its folder cannot be written. Nothing was changed."),
                          book, error);
    } catch (const Error&) {
        QFile::remove(part);
        throw;
    }
    if (const int error = syncFolderOf(book)) throw notOnDisk(book, error);
}

Error olderBook(const QString& path) {
    return refused(QStringLiteral("%1 was written by an older version of this program and must be brought up to date: "
                                  "open it once for writing (a copy is kept)."),
                   path);
}

Error newerBook(const QString& path, qint64 version, int newest) {
    return Error(Error::Kind::Book,
                 QStringLiteral("%1 was written by a newer version of this program (book version %2, this program "
                                "knows up to %3). Open it with that version.")
                     .arg(shownPath(path))
                     .arg(version)
                     .arg(newest));
}

void throwNaming(const Error& e, const QString& path, const QString& part) {
    const QString shown = shownPath(path);
    QString said = e.userMessage();
    if (!part.isEmpty()) said.replace(shownPath(part), shown);
    if (!said.contains(shown)) said = shown + QStringLiteral(": ") + said;
    if (said == e.userMessage()) throw;
    if (dynamic_cast<const Damaged*>(&e)) throw Damaged(said, e.detail());
    if (dynamic_cast<const NoBook*>(&e)) throw NoBook(said, e.detail());
    throw Error(e.kind(), said, e.detail());
}

} // namespace core::store
