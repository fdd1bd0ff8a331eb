#include "core/store/book_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUrl>
#include <QUuid>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
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

/// Renames without replacing. Returns 0 or an errno.
int giveName(const QByteArray& from, const QByteArray& to) {
    if (renameat2(AT_FDCWD, from.constData(), AT_FDCWD, to.constData(), RENAME_NOREPLACE) == 0) return 0;
    if (errno != EINVAL && errno != ENOSYS) return errno;
    if (link(from.constData(), to.constData()) != 0) return errno;
    unlink(from.constData());
    return 0;
}

/// What is at `book` goes to `aside` and `part` takes its name. Returns 0 or an errno, then nothing has changed.
int exchange(const QByteArray& part, const QByteArray& book, const QByteArray& aside) {
    if (renameat2(AT_FDCWD, part.constData(), AT_FDCWD, book.constData(), RENAME_EXCHANGE) == 0)
        return rename(part.constData(), aside.constData()) == 0 ? 0 : errno;
    if (errno != EINVAL && errno != ENOSYS) return errno;
    if (const int error = giveName(book, aside)) return error;
    const int error = giveName(part, book);
    if (error != 0) giveName(aside, book);
    return error;
}

/// A file or a folder: to the disk.
void sync(const QString& path) {
    const int file = open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return;
    fsync(file);
    close(file);
}

} // namespace

QString shownPath(const QString& path) { return QDir::toNativeSeparators(path); }

BookFile lookAt(const QString& path, Access access) {
    const QFileInfo info(path);
    if (!info.exists()) throw refused(QStringLiteral("There is no book %1."), path);
    if (info.isDir()) throw refused(QStringLiteral("%1 is a folder, not a book."), path);
    if (!info.isFile()) throw refused(QStringLiteral("%1 is not a book of this program."), path);
    BookFile file;
    file.path = info.canonicalFilePath();
    if (!info.isReadable()) throw refused(QStringLiteral("The book %1 cannot be read: access is denied."), path);
    const bool canWrite = writable(file.path) && writable(QFileInfo(file.path).path());
    if (access == Access::ReadWrite && !canWrite)
        throw refused(QStringLiteral("The book %1 cannot be written: the file or its folder is read-only."), path);
    // A reader opens for writing too where it can: only so is a killed program's half edit taken back. It writes
    // nothing else (query_only).
    file.uri = uriOf(file.path, canWrite ? "rw" : "ro");
    return file;
}

NewBookFile::NewBookFile(const QString& path) : m_path(QFileInfo(path).absoluteFilePath()) {
    if (QFileInfo::exists(path) || QFileInfo(path).isSymLink())
        throw refused(QStringLiteral("%1 exists already: a new book needs a new name."), path);
    const QString folder = QFileInfo(path).absolutePath();
    if (!QFileInfo(folder).isDir()) throw refused(QStringLiteral("There is no folder %1."), folder);
    const QString token = QUuid::createUuid().toString(QUuid::Id128).left(12);
    m_part.path = folder + QStringLiteral("/.new-") + token + QStringLiteral(".yardwright");
    m_part.uri = uriOf(m_part.path, "rw");
    const int file = open(QFile::encodeName(m_part.path).constData(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (file < 0) throw refused(QStringLiteral("%1 cannot be made: its folder cannot be written."), path, errno);
    close(file);
}

NewBookFile::~NewBookFile() {
    QFile::remove(m_part.path);
    QFile::remove(m_part.path + QStringLiteral("-journal"));
}

void NewBookFile::keep() {
    sync(m_part.path);
    const int error = giveName(QFile::encodeName(m_part.path), QFile::encodeName(m_path));
    if (error != 0)
        throw refused(QStringLiteral("%1 cannot be made: the name is taken or not allowed."), m_path, error);
    sync(QFileInfo(m_path).absolutePath());
}

void takePlace(const QString& part, const QString& book, const QString& aside) {
    const QByteArray from = QFile::encodeName(part);
    const QByteArray to = QFile::encodeName(book);
    const auto failed = [&](int error) {
        return refused(QStringLiteral("%1 cannot be replaced: its folder cannot be written. Nothing was changed."),
                       book, error);
    };
    sync(part);
    if (!QFileInfo::exists(book)) {
        if (const int error = giveName(from, to)) throw failed(error);
    } else {
        if (QFileInfo::exists(aside)) throw failed(EEXIST);
        // A journal of the old book must never be read as one of the new.
        const QString journal = QStringLiteral("-journal");
        const bool hot = QFile::rename(book + journal, aside + journal);
        if (const int error = exchange(from, to, QFile::encodeName(aside))) {
            if (hot) QFile::rename(aside + journal, book + journal);
            throw failed(error);
        }
    }
    sync(QFileInfo(book).absolutePath());
}

Error olderBook(const QString& path) {
    return refused(QStringLiteral("%1 was written by an older version of this program and must be brought up to date: "
                                  "open it once for writing (a copy is kept)."),
                   path);
}

Error namingFile(const Error& e, const QString& path) {
    const QString shown = shownPath(path);
    if (e.userMessage().contains(shown)) return e;
    return Error(e.kind(), shown + QStringLiteral(": ") + e.userMessage(), e.detail());
}

} // namespace core::store
