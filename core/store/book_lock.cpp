#include "core/store/book_lock.h"

#include "core/base/error.h"

#include <QDir>
#include <QFile>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core::store {

namespace {

Error cannotLock(const QByteArray& path, int error) {
    const QString detail =
        QString::fromLocal8Bit(path) + QStringLiteral(": ") + QString::fromLocal8Bit(strerror(error));
    if (error == EWOULDBLOCK)
        return Error(Error::Kind::Book,
                     QStringLiteral("The book is held by another program or window, which may be writing to it. "
                                    "Close it there first."),
                     detail);
    return Error(Error::Kind::Book,
                 QStringLiteral("The book cannot be opened for writing: a file beside it cannot be made. "
                                "Is its folder read-only or the disk full?"),
                 detail);
}

/// Whether `path` still names the open file: its last holder may have deleted it between our open and our lock.
bool stillNamed(const QByteArray& path, int file) {
    struct stat named {};
    struct stat held {};
    return stat(path.constData(), &named) == 0 && fstat(file, &held) == 0 && named.st_dev == held.st_dev &&
           named.st_ino == held.st_ino;
}

} // namespace

BookLock::BookLock(const QString& bookPath) : m_path(QFile::encodeName(bookPath + QStringLiteral("-lock"))) {
    while (m_file < 0) {
        const int file = open(m_path.constData(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0666);
        if (file < 0) throw cannotLock(m_path, errno);
        if (flock(file, LOCK_EX | LOCK_NB) != 0) {
            const int error = errno;
            close(file);
            throw cannotLock(m_path, error);
        }
        if (stillNamed(m_path, file))
            m_file = file;
        else
            close(file);
    }
}

BookLock::~BookLock() {
    unlink(m_path.constData());
    close(m_file);
}

} // namespace core::store
