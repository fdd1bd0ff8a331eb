#include "core/store/book_lock.h"

#include "core/store/book_note.h"

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

QString detailOf(const QByteArray& path, int error) {
    return QString::fromLocal8Bit(path) + QStringLiteral(": ") + QString::fromLocal8Bit(strerror(error));
}

Error cannotLock(const QByteArray& path, int error) {
    return Error(Error::Kind::Book,
                 QStringLiteral("The book cannot be opened for writing: a file beside it cannot be made. "
                                "Is its folder read-only or the disk full?"),
                 detailOf(path, error));
}

/// `file` is open, and locked by another.
BookHeld held(const QByteArray& path, int file, int error) {
    QByteArray note(kLongestNote, '\0');
    const ssize_t got = pread(file, note.data(), kLongestNote, 0);
    note.truncate(got > 0 ? got : 0);
    return BookHeld(QStringLiteral("The book is held by another program or window, which may be writing to it. "
                                   "Close it there first."),
                    detailOf(path, error), holderIn(note));
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
            const BookHeld byAnother = held(m_path, file, error);
            close(file);
            if (error == EWOULDBLOCK) throw byAnother;
            throw cannotLock(m_path, error);
        }
        if (stillNamed(m_path, file))
            m_file = file;
        else
            close(file);
    }
    if (ftruncate(m_file, 0) != 0) qWarning("an old note stays beside the book: %s", strerror(errno));
}

void BookLock::sign(const BookHolder& holder) const {
    const QByteArray note = noteOf(holder);
    const bool written = ftruncate(m_file, 0) == 0 &&
                         pwrite(m_file, note.constData(), static_cast<size_t>(note.size()), 0) == note.size();
    if (!written) qWarning("nobody can be told who has the book: %s", strerror(errno));
}

BookLock::~BookLock() {
    unlink(m_path.constData());
    close(m_file);
}

} // namespace core::store
